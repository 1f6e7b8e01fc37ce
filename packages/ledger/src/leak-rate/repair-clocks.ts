import { ok, type Problem, type Result, type Statement, say } from '@chargewright/quantity'
import { type Day, monthsLater } from './calendar.ts'
import { type Clock, clock } from './clock.ts'
import { type Exceedance, type ExceedanceDays, readExceedanceDays } from './exceedance.ts'
import { inspectionClock } from './inspection-clock.ts'
import type { LeakRepairLaw } from './leak-repair-law.ts'

/**
 * The clocks that run once an appliance leaks over its rate: repair and both tests, the inspections after them, and the
 * retrofit or retirement that stands in for a repair.
 */
export function repairClocks(exceedance: Exceedance, law: LeakRepairLaw): Result<readonly Clock[], Problem> {
  const read = readExceedanceDays(exceedance)
  if (!read.ok) return read
  const days = read.value
  const { repair_days, followUp_days, retrofit } = law
  const { normal, processShutdown } = repair_days.value
  const repairBy = paused(days.exceededOn + (exceedance.processShutdown ? processShutdown : normal), days)
  return ok([
    clock(say`Find and repair the leaks`, repairBy, repair_days),
    clock(say`Pass the initial verification test`, repairBy, repair_days),
    clock(say`Pass the follow-up verification test`, followUpBy(days, followUp_days.value), followUp_days),
    inspectionClock(exceedance, days, law),
    clock(
      say`If it is not repaired: a retrofit or retirement plan`,
      paused(days.exceededOn + retrofit.value.plan_days, days),
      retrofit,
    ),
    clock(say`If it is not repaired: retrofitted or retired`, retrofitBy(days, retrofit.value), retrofit),
  ])
}

/** Days after the initial test, or after normal running where the appliance had to be evacuated. */
function followUpBy(days: ExceedanceDays, followUp_days: number): Day | Statement {
  const { initialTestPassedOn: tested, runsNormallyOn } = days
  if (tested === undefined) return say`a passed initial verification test`
  return paused(Math.max(tested, runsNormallyOn ?? tested) + followUp_days, days)
}

function retrofitBy(days: ExceedanceDays, rule: LeakRepairLaw['retrofit']['value']): Day | Statement {
  const { retrofitPlanOn, exceededOn } = days
  if (retrofitPlanOn === undefined) return say`the date of the plan`
  const afterPlan = monthsLater(retrofitPlanOn, rule.afterPlan_months)
  const latest = rule.afterTrigger_months === undefined ? afterPlan : monthsLater(exceededOn, rule.afterTrigger_months)
  return paused(Math.min(afterPlan, latest), days)
}

/** The days in which the appliance was mothballed do not count. */
function paused(due: Day, { pause }: ExceedanceDays): Day | Statement {
  if (!pause || pause.from > due) return due
  return pause.to === undefined ? say`refrigerant to be added to the mothballed appliance` : due + pause.to - pause.from
}
