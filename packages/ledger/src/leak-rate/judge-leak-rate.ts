import { type Statement, say } from '@chargewright/quantity'
import type { LeakRate } from './leak-rate.ts'
import { APPLIANCE_USES, type ApplianceUse, type LeakRepairLaw } from './leak-repair-law.ts'
import { isConfirmed } from './provision.ts'

export interface LeakVerdict {
  /** Over the threshold: the leak must be repaired, or the appliance retrofitted or retired. */
  readonly over: boolean
  readonly threshold_percent: number
  readonly sentence: Statement
  readonly source: string
  readonly confirmed: boolean
}

/** Holds a leak rate against the threshold of its use. A rate at the threshold is not over it. */
export function judgeLeakRate(rate: LeakRate, law: LeakRepairLaw, use: ApplianceUse): LeakVerdict {
  const threshold = law.thresholds_percent[use]
  const over = rate.percent > threshold.value
  const relation = over ? 'is over' : 'is not over'
  return {
    over,
    threshold_percent: threshold.value,
    sentence: say`Leak rate ${shown(rate.percent)} % a year (${rate.method}) ${relation} the ${threshold.value} % of ${APPLIANCE_USES[use]}`,
    source: threshold.source,
    confirmed: isConfirmed(threshold),
  }
}

/** Digits enough that a rate just over the threshold does not read as at it. */
const shown = (percent: number) => Number(percent.toPrecision(6))
