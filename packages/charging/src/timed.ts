import type { Quantity, Statement } from '@chargewright/quantity'
import type { Step } from './assessment.ts'
import { LIMITS } from './limit.ts'

const timed =
  (purpose: NonNullable<Step['wait']>['purpose'], duration: Quantity<'duration'>) =>
  (statement: Statement): Step => ({ ...statement, wait: { purpose, duration } })

/** Something to do that takes the time in which a system settles, or in which its pressures equalise. */
export const settling = timed('settle', LIMITS.settleTime.quantity)
export const equalising = timed('equalise', LIMITS.equaliseTime.quantity)
