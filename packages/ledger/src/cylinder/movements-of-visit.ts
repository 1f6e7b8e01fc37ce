import type { EntryProblem, Move, Visit } from '@chargewright/visit'
import type { Movement, Weighing } from './movement.ts'

/**
 * The moves of a folded visit as movements of the book, in order. Where the gross weights were taken, they count, and
 * the mass that the visit records is held against them; else that mass is all there is.
 *
 * @param system its name in the book
 * @returns also a problem for each move whose cylinder or refrigerant is not named
 */
export function movementsOfVisit(
  visit: Visit,
  system: string,
): { readonly movements: readonly Movement[]; readonly problems: readonly EntryProblem[] } {
  const movements: Movement[] = []
  const problems: EntryProblem[] = []
  for (const move of visit.moves) {
    const { eventId, at, fact } = move
    const refrigerant = fact.refrigerant ?? visit.system.facts.refrigerant
    if (fact.cylinder === undefined || refrigerant === undefined) {
      problems.push({ eventId, problem: notNamed(fact.cylinder === undefined ? 'cylinder' : 'refrigerant') })
      continue
    }
    movements.push({
      id: `${visit.id}/${eventId}`,
      at,
      cylinder: fact.cylinder,
      refrigerant,
      direction: fact.direction === 'into-system' ? 'from-cylinder' : 'to-cylinder',
      counterpart: { kind: 'system', system },
      weighing: weighingOf(move),
      visit: visit.id,
    })
  }
  return { movements, problems }
}

function weighingOf({ mass, weighing }: Move): Weighing {
  return weighing ? { kind: 'before-and-after', ...weighing, stated: mass } : { kind: 'difference', mass }
}

const notNamed = (what: 'cylinder' | 'refrigerant') =>
  ({
    kind: 'missing',
    field: `${what} of the move`,
    value: 'nothing',
    accepted: `the ${what} it came from or went into`,
  }) as const
