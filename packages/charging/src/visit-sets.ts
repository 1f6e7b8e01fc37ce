import type { Move, Reading, ReadingId, Visit } from '@chargewright/visit'

/** The readings of one settled state, and what had been weighed in since the first. */
export interface VisitSet {
  readonly readings: Visit['readings']
  /** kg; negative when recovered. */
  readonly added_kg: number
}

/**
 * The sets of readings of a visit: one before the first weighed step, one after each. What is read of the circuit counts
 * for its own set alone; what is read of the weather and the room holds until it is read again.
 */
export function visitSets(visit: Visit): readonly VisitSet[] {
  return [undefined, ...visit.moves].map((move, i) => {
    const from = move?.position ?? -1
    const to = visit.moves[i]?.position ?? Number.POSITIVE_INFINITY
    const own = visit.history.filter(({ position }) => position > from && position < to)
    const standing = visit.history.filter(({ position, what }) => position < to && OF_THE_SITE.includes(what))
    return { readings: latest([...standing, ...own]), added_kg: added(visit.moves.slice(0, i)) }
  })
}

/** Read of the weather and the room: it holds until it is read again. */
export const OF_THE_SITE: readonly ReadingId[] = [
  'return-air-dry-bulb',
  'return-air-wet-bulb',
  'return-air-humidity',
  'condenser-entering-air',
]

const latest = (set: readonly Reading[]): Visit['readings'] =>
  Object.fromEntries(set.map((reading) => [reading.what, reading]))

const added = (moves: readonly Move[]): number =>
  moves.reduce((sum, { fact, mass }) => sum + (fact.direction === 'into-system' ? mass.si : -mass.si), 0)
