import { ok, type Problem, type Result } from '@chargewright/quantity'
import type { Mass } from '../cylinder/cylinder.ts'
import { type Day, readDay } from './calendar.ts'
import type { ApplianceUse } from './leak-repair-law.ts'

/** What happened since refrigerant was added to an appliance over its leak rate. Days as ISO text. */
export interface Exceedance {
  readonly use: ApplianceUse
  readonly fullCharge: Mass
  readonly exceededOn: string
  readonly processShutdown?: boolean
  readonly initialTestPassedOn?: string
  /** Only where the appliance was evacuated for the repair: when it ran normally again. */
  readonly runsNormallyOn?: string
  readonly followUpPassedOn?: string
  readonly lastInspectionOn?: string
  readonly retrofitPlanOn?: string
  /** Evacuated and shut down: the clocks of repair and retrofit stand still until refrigerant is added again. */
  readonly mothballed?: { readonly from: string; readonly to?: string }
}

const DAY_FIELDS = [
  'exceededOn',
  'initialTestPassedOn',
  'runsNormallyOn',
  'followUpPassedOn',
  'lastInspectionOn',
  'retrofitPlanOn',
] as const

/** The days of an exceedance, read; what has not happened is absent. */
export interface ExceedanceDays extends Readonly<Partial<Record<(typeof DAY_FIELDS)[number], Day>>> {
  readonly exceededOn: Day
  readonly pause?: { readonly from: Day; readonly to?: Day }
}

/** @returns the problem of the first day that cannot be read */
export function readExceedanceDays(exceedance: Exceedance): Result<ExceedanceDays, Problem> {
  const days: { [Name in (typeof DAY_FIELDS)[number]]?: Day } = {}
  for (const name of DAY_FIELDS) {
    const text = exceedance[name]
    if (text === undefined) continue
    const day = readDay(text, name)
    if (!day.ok) return day
    days[name] = day.value
  }
  const { mothballed } = exceedance
  const read = { ...days, exceededOn: days.exceededOn! }
  if (!mothballed) return ok(read)
  const from = readDay(mothballed.from, 'mothballed.from')
  if (!from.ok) return from
  if (mothballed.to === undefined) return ok({ ...read, pause: { from: from.value } })
  const to = readDay(mothballed.to, 'mothballed.to')
  return to.ok ? ok({ ...read, pause: { from: from.value, to: Math.max(from.value, to.value) } }) : to
}
