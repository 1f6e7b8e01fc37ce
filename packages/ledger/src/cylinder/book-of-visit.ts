import type { EntryProblem, Visit } from '@chargewright/visit'
import type { CylinderBook } from './balance-book.ts'
import { movementsOfVisit } from './movements-of-visit.ts'

/**
 * The cylinders of one visit as they came into it, and what they gave and took there, as a book of its own.
 *
 * @returns also a problem for each move that names no cylinder or no refrigerant
 */
export function bookOfVisit(visit: Visit): {
  readonly book: CylinderBook
  readonly problems: readonly EntryProblem[]
} {
  const { movements, problems } = movementsOfVisit(visit, visit.system.facts.name ?? 'the system of this visit')
  const cylinders = visit.cylinders.map(({ fact, tare, waterCapacity, gross }) => ({
    id: fact.cylinder,
    refrigerant: fact.refrigerant,
    holds: fact.holds,
    refillable: fact.refillable,
    tare,
    waterCapacity,
    firstWeighing: gross,
  }))
  return { book: { cylinders, entries: movements.map((movement) => ({ kind: 'moved', movement })) }, problems }
}
