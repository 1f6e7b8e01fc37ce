import type { EntryProblem, Move, Visit } from '@chargewright/visit'
import type { Mass } from './cylinder.ts'
import type { Movement, Weighing } from './movement.ts'

/** What the visit itself does not say: which system of the book it was, and the cylinder's gross weights if taken. */
export interface VisitContext {
  readonly system: string
  /** Gross weights of the cylinder before and after, by the id of the event that records the move. */
  readonly weighings?: ReadonlyMap<string, { readonly before: Mass; readonly after: Mass; readonly hoses?: Mass }>
}

/**
 * The moves of a folded visit as movements of the book, in order. Where the gross weights were taken, they count, and
 * the mass that the visit records is held against them; else that mass is all there is.
 *
 * @returns also a problem for each move whose cylinder or refrigerant is not named
 */
export function movementsOfVisit(
  visit: Visit,
  context: VisitContext,
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
      counterpart: { kind: 'system', system: context.system },
      weighing: weighingOf(move, context),
      visit: visit.id,
    })
  }
  return { movements, problems }
}

function weighingOf({ eventId, mass }: Move, { weighings }: VisitContext): Weighing {
  const gross = weighings?.get(eventId)
  return gross ? { kind: 'before-and-after', ...gross, stated: mass } : { kind: 'difference', mass }
}

const notNamed = (what: 'cylinder' | 'refrigerant') =>
  ({
    kind: 'missing',
    field: `${what} of the move`,
    value: 'nothing',
    accepted: `the ${what} it came from or went into`,
  }) as const
