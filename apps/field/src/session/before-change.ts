import type { Origin, Visit } from '@chargewright/visit'

/** The last thing that was done to the system: refrigerant moved or something adjusted. */
export function lastChange({ moves, adjustments }: Pick<Visit, 'moves' | 'adjustments'>): Origin | undefined {
  return [...moves, ...adjustments].reduce<Origin | undefined>(
    (last, change) => (last && last.position > change.position ? last : change),
    undefined,
  )
}

/** Whether an entry is from before that change, so that it tells of a system that is no more. */
export function isBefore(change: Origin | undefined, entry: Origin | undefined): boolean {
  return change !== undefined && entry !== undefined && entry.position < change.position
}
