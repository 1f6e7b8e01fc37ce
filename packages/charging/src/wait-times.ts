import { quantity } from '@chargewright/quantity'
import type { Limit } from './limit.ts'

export const RA3 = 'California residential field verification, RA3.2 (2008)'

/** How long things take, apart from the other limits: a clock needs these and nothing else. */
export const WAIT_TIMES = {
  /** Run-in before readings count, and again after every change. READ. */
  settleTime: { quantity: quantity('duration', 15 * 60), source: RA3 },
  /** Rest after liquid went into the high side of a stopped system. */
  equaliseTime: { quantity: quantity('duration', 10 * 60), source: 'common practice' },
} as const satisfies Readonly<Record<string, Limit<'duration'>>>
