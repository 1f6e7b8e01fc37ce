import { type Evidence, evidence, type Quantity, quantity, say } from '@chargewright/quantity'
import type { Move, Reading } from '@chargewright/visit'
import { measure } from './measures/measures.ts'
import type { Case } from './ruling.ts'

/** The measure by which a method follows the charge. */
export type Watched = 'superheat' | 'subcooling'

/** What the last weighed step did to the watched measure. */
export interface Response {
  /** Change per kilogram put in, K/kg. */
  readonly perKilogram: number
  readonly evidence: Evidence
}

/**
 * The system's own response, from the last weighed step with readings on both sides of it; undefined where there is no
 * such step, or where the change lies within its own uncertainty and so says nothing.
 */
export function response(asked: Case, watched: Watched): Response | undefined {
  const { visit } = asked
  const move = visit.moves.at(-1)
  if (!move) return undefined
  const previous = visit.moves.at(-2)
  const before = measureFrom(
    asked,
    watched,
    (r) => r.position < move.position && !(previous && r.position < previous.position),
  )
  const after = measureFrom(asked, watched, (r) => r.position > move.position)
  if (!before || !after) return undefined
  const change = quantity('temperature difference', after.si - before.si, Math.hypot(before.u ?? 0, after.u ?? 0))
  if (!(Math.abs(change.si) > (change.u ?? 0)) || move.mass.si === 0) return undefined
  const act = move.fact.direction === 'into-system' ? 'Adding' : 'Recovering'
  return {
    perKilogram: change.si / signedMass(move),
    evidence: { ...evidence(say`${act} ${move.mass} changed the ${watched} by ${change}`), eventId: move.eventId },
  }
}

const signedMass = (move: Move) => (move.fact.direction === 'into-system' ? move.mass.si : -move.mass.si)

function measureFrom(
  { visit, refrigerant }: Case,
  watched: Watched,
  counts: (reading: Reading) => boolean,
): Quantity<'temperature difference'> | undefined {
  const readings = Object.fromEntries(visit.history.filter(counts).map((reading) => [reading.what, reading]))
  return measure({ ...visit, readings }, refrigerant).measures[watched]?.quantity
}
