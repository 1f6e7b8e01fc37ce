import { fail, ok, outOfRange, type Problem, type Result } from '@chargewright/quantity'
import type { Mass } from '../cylinder/cylinder.ts'
import { type Addition, datedAdditions } from './addition.ts'
import { yearOf } from './calendar.ts'
import { rollingLeakRate } from './leak-rate.ts'
import type { LeakRepairLaw } from './leak-repair-law.ts'
import { isConfirmed } from './provision.ts'

export interface ChronicLeak {
  readonly chronic: boolean
  readonly percent: number
  /** Day by which the owner reports, where the appliance leaks chronically. */
  readonly reportBy: string
  readonly source: string
  readonly confirmed: boolean
}

/**
 * Whether an appliance leaked chronically in a calendar year: additions of that year against the full charge, at the
 * figure or over it.
 *
 * @param year whole calendar year, 1900 to 2199
 */
export function chronicLeak(
  { additions, fullCharge }: { readonly additions: readonly Addition[]; readonly fullCharge: Mass },
  year: number,
  law: LeakRepairLaw,
): Result<ChronicLeak, Problem> {
  const problem = outOfRange('year', year, 1900, 2199, 'years')
  if (problem) return fail(problem)
  if (!Number.isInteger(year)) return fail({ kind: 'unreadable', field: 'year', value: `${year}`, accepted: 'a year' })
  const dated = datedAdditions(additions)
  if (!dated.ok) return dated
  const si = dated.value
    .filter(({ day, exempt }) => yearOf(day) === year && !exempt)
    .reduce((sum, { mass }) => sum + mass.si, 0)
  const rate = rollingLeakRate({ dimension: 'mass', si }, fullCharge, 365)
  if (!rate.ok) return rate
  const { percent } = rate.value
  const { value, source } = law.chronic_percent
  return ok({
    chronic: percent >= value,
    percent,
    reportBy: `${year + 1}-03-01`,
    source,
    confirmed: isConfirmed(law.chronic_percent),
  })
}
