import type { Origin } from '@chargewright/visit'

/** Whether an entry is from before that change, so that it tells of a system that is no more. */
export function isBefore(change: Origin | undefined, entry: Origin | undefined): boolean {
  return change !== undefined && entry !== undefined && entry.position < change.position
}
