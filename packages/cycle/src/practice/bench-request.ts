import type { Action } from './act.ts'

/** One thing asked of the bench, at a prompt, by a script or on a screen. */
export type BenchRequest =
  | { readonly kind: 'help' | 'look' | 'debrief' }
  | { readonly kind: 'wait'; readonly duration_s: number }
  | Action

/** A day: whoever waits longer has gone home. */
export const LONGEST_WAIT_S = 86_400
