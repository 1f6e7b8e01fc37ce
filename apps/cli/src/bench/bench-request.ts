import type { Action } from '@chargewright/cycle'

/** One thing asked of the bench, at the prompt or by a script. */
export type BenchRequest =
  | { readonly kind: 'help' | 'look' | 'debrief' }
  | { readonly kind: 'wait'; readonly duration_s: number }
  | Action

/** A day: whoever waits longer has gone home. */
export const LONGEST_WAIT_S = 86_400
