import { fail, ok, outOfRange, type Problem, quantity, type Result } from '@chargewright/quantity'
import type { Mass } from '../cylinder/cylinder.ts'

/** How much of its full charge an appliance loses in twelve months, by one of the two methods of the law. */
export interface LeakRate {
  readonly method: 'annualizing' | 'rolling'
  /** Percent of the full charge in twelve months. */
  readonly percent: number
  /** Standard uncertainty from the weights; the law compares the percent as it is. */
  readonly u_percent: number
  readonly added: Mass
  /** Days over which the additions are taken. */
  readonly period_days: number
}

const YEAR_DAYS = 365

/**
 * Annualizing method: (added / full charge) / (min(days, 365) / 365) · 100.
 *
 * @param added kg, 0 or more; several additions for the same leak are summed
 * @param fullCharge kg, above 0
 * @param days since the last day on which refrigerant was added before these: 1 or more. Two additions on one day are
 * one addition, so that 0 is refused.
 * @source 40 CFR 82.152, leak rate, (1)
 */
export function annualizedLeakRate(added: Mass, fullCharge: Mass, days: number): Result<LeakRate, Problem> {
  const problem =
    massesProblem(added, fullCharge) ??
    outOfRange('days since the last addition', days, 1, Number.MAX_SAFE_INTEGER, 'days')
  if (problem) return fail(problem)
  const period_days = Math.min(days, YEAR_DAYS)
  return ok({ method: 'annualizing', ...ofFullCharge(added, fullCharge, period_days / YEAR_DAYS), period_days })
}

/**
 * Rolling average method: sum of the additions of the period / full charge · 100.
 *
 * @param added kg, summed over the last 365 days or since the last passed follow-up test, if that is less
 * @param fullCharge kg, above 0
 * @param period_days 0 to 365; it is told, not reckoned with
 * @source 40 CFR 82.152, leak rate, (2)
 */
export function rollingLeakRate(added: Mass, fullCharge: Mass, period_days: number): Result<LeakRate, Problem> {
  const problem = massesProblem(added, fullCharge) ?? outOfRange('period', period_days, 0, YEAR_DAYS, 'days')
  if (problem) return fail(problem)
  return ok({ method: 'rolling', ...ofFullCharge(added, fullCharge, 1), period_days })
}

function ofFullCharge(added: Mass, fullCharge: Mass, years: number) {
  const percent = (added.si / fullCharge.si / years) * 100
  // Relative in quadrature, written so that nothing added is certain of the weights, not 0/0.
  const u_percent =
    (Math.hypot(added.u ?? 0, (added.si / fullCharge.si) * (fullCharge.u ?? 0)) / fullCharge.si / years) * 100
  return { percent, u_percent, added: quantity('mass', added.si, added.u) }
}

/** Heavier than any appliance; a gram and less is no full charge. */
const MAX_KG = 1e6
const MIN_FULL_CHARGE_KG = 1e-3

function massesProblem(added: Mass, fullCharge: Mass): Problem | undefined {
  return (
    outOfRange('refrigerant added', added.si, 0, MAX_KG, 'kg') ??
    outOfRange('full charge', fullCharge.si, MIN_FULL_CHARGE_KG, MAX_KG, 'kg') ??
    outOfRange('refrigerant added, uncertainty', added.u ?? 0, 0, MAX_KG, 'kg') ??
    outOfRange('full charge, uncertainty', fullCharge.u ?? 0, 0, MAX_KG, 'kg')
  )
}
