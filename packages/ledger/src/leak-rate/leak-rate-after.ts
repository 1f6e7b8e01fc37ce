import { add, fail, type Problem, quantity, type Result } from '@chargewright/quantity'
import type { Mass } from '../cylinder/cylinder.ts'
import { type Addition, type DatedAddition, datedAdditions } from './addition.ts'
import { type Day, dayText, readDay } from './calendar.ts'
import { annualizedLeakRate, type LeakRate, rollingLeakRate } from './leak-rate.ts'
import type { LeakRepairLaw } from './leak-repair-law.ts'

/** The history of one appliance up to the addition in question. */
export interface LeakHistory {
  readonly fullCharge: Mass
  readonly additions: readonly Addition[]
  /** Day of the addition for which the rate is asked. */
  readonly on: string
  /** Day of the last passed follow-up verification test that showed every leak repaired. */
  readonly followUpPassedOn?: string
}

/**
 * The leak rate that the law asks for after an addition, by one method for the whole facility.
 *
 * @returns a problem when nothing that counts was added on that day, and, by the annualizing method, when no earlier
 * addition is known and the law names no period for a first rate
 */
export function leakRateAfter(
  history: LeakHistory,
  method: LeakRate['method'],
  law: LeakRepairLaw,
): Result<LeakRate, Problem> {
  const on = readDay(history.on, 'on')
  if (!on.ok) return on
  const dated = datedAdditions(history.additions)
  if (!dated.ok) return dated
  const known = dated.value.filter(({ day }) => day <= on.value)
  const today = known.filter((addition) => addition.day === on.value && !addition.exempt)
  if (today.length === 0) return fail(nothingAdded(history.on))
  return method === 'annualizing' ? annualizing(history, law, known, today) : rolling(history, law, known, on.value)
}

/** All additions of the day and those for the same leaks before it, over the days since the addition before the first. */
function annualizing(
  { fullCharge }: LeakHistory,
  law: LeakRepairLaw,
  known: readonly DatedAddition[],
  today: readonly DatedAddition[],
): Result<LeakRate, Problem> {
  const leaks = new Set(today.map(({ leak }) => leak).filter((leak) => leak !== undefined))
  const group = known.filter(
    (each) => today.includes(each) || (!each.exempt && each.leak !== undefined && leaks.has(each.leak)),
  )
  const start = group[0]!.day
  const before = known.findLast(({ day }) => day < start)
  const first = law.firstPeriod_days && isFirst(law, known, start)
  if (first) return annualizedLeakRate(total(group), fullCharge, law.firstPeriod_days.value)
  if (!before) return fail(noEarlierAddition())
  return annualizedLeakRate(total(group), fullCharge, today[0]!.day - before.day)
}

const ROLLING_DAYS = 365

/**
 * Additions after the day of the last follow-up test, since what went in on that day went in before it. An addition of
 * the very date a year ago counts: the law leaves it open, and so no day falls between two periods.
 */
function rolling(
  { fullCharge, followUpPassedOn }: LeakHistory,
  law: LeakRepairLaw,
  known: readonly DatedAddition[],
  on: Day,
): Result<LeakRate, Problem> {
  const followUp = followUpPassedOn === undefined ? undefined : readDay(followUpPassedOn, 'followUpPassedOn')
  if (followUp && !followUp.ok) return followUp
  const tested = followUp && followUp.value < on ? followUp.value + 1 : -Infinity
  const since = Math.max(on - ROLLING_DAYS, tested)
  const from = law.additionsFrom && isFirst(law, known, on) ? law.additionsFrom.value : ''
  const counted = known.filter(({ day, exempt }) => !exempt && day >= since && dayText(day) >= from)
  return rollingLeakRate(total(counted), fullCharge, on - since)
}

/** Whether this is the first rate since the law began: only additions that count make a rate. */
function isFirst({ inForce }: LeakRepairLaw, known: readonly DatedAddition[], start: Day): boolean {
  return !known.some(({ day, exempt }) => !exempt && day < start && dayText(day) >= inForce.from)
}

const total = (additions: readonly Addition[]): Mass =>
  additions.reduce((sum, { mass }) => add(sum, mass), quantity('mass', 0) as Mass)

const nothingAdded = (on: string): Problem => ({
  kind: 'missing',
  field: 'additions',
  value: 'nothing',
  accepted: `an addition on ${on.slice(0, 10)} that is neither retrofit, installation nor seasonal variance`,
})

const noEarlierAddition = (): Problem => ({
  kind: 'missing',
  field: 'additions',
  value: 'nothing',
  accepted: 'the day on which refrigerant was last added before, if only at installation',
})
