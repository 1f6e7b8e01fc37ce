import type { Origin, Visit } from './visit.ts'

/** The last thing that was done to the system: refrigerant moved or something adjusted. */
export function lastChange({ moves, adjustments }: Pick<Visit, 'moves' | 'adjustments'>): Origin | undefined {
  return [...moves, ...adjustments].reduce<Origin | undefined>(
    (last, change) => (last && last.position > change.position ? last : change),
    undefined,
  )
}
