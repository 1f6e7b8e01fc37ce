import { type Statement, say } from '@chargewright/quantity'
import { type Day, monthsLater, yearEnd, yearOf } from './calendar.ts'
import { type Clock, clock } from './clock.ts'
import type { Exceedance, ExceedanceDays } from './exceedance.ts'
import type { LeakRepairLaw } from './leak-repair-law.ts'

const YEARLY_MONTHS = 12

/**
 * When the next leak inspection is due. Large refrigeration appliances are inspected every three months, all others
 * once a year, until the appliance has kept below its leak rate for four quarters or one year.
 */
export function inspectionClock(
  { use, fullCharge }: Exceedance,
  days: ExceedanceDays,
  { inspections }: LeakRepairLaw,
): Clock {
  const refrigeration = use === 'commercial-refrigeration' || use === 'industrial-process'
  const large = refrigeration && fullCharge.si >= inspections.large.value.from_kg
  return large
    ? clock(
        say`Inspect for leaks, until it kept to its leak rate for four quarters in a row`,
        inspectBy(days, inspections, true),
        inspections.large,
      )
    : clock(
        say`Inspect for leaks, until it kept to its leak rate for one year`,
        inspectBy(days, inspections, false),
        inspections.others,
      )
}

function inspectBy(days: ExceedanceDays, rule: LeakRepairLaw['inspections'], large: boolean): Day | Statement {
  const { exceededOn, followUpPassedOn, lastInspectionOn } = days
  const start = rule.startAtFollowUp.value ? followUpPassedOn : exceededOn
  if (start === undefined) return say`a passed follow-up verification test`
  const last = Math.max(start, lastInspectionOn ?? start)
  if (large) return monthsLater(last, rule.large.value.everyMonths)
  if (rule.others.value === 'each-year-after-the-last') return monthsLater(last, YEARLY_MONTHS)
  return yearEnd(lastInspectionOn === undefined ? yearOf(exceededOn) : yearOf(lastInspectionOn) + 1)
}
