import { type Assessment, assess } from '@chargewright/charging'
import { inQuadrature, type Quantity, quantity } from '@chargewright/quantity'
import type { Move, Reading, Visit } from '@chargewright/visit'

/** The system between two weighed steps: what went in so far, and the measure that the method watches. */
export interface ChargeStep {
  /** Net of what went in and came out since the start of the visit; negative where more came out. */
  readonly net: Quantity<'mass'>
  /** Absent where nothing was read, or not enough, before the next step. */
  readonly measure?: Quantity<'temperature difference'>
}

/** What the method of an assessment watches while the charge changes. */
export const watchedBy = ({ method }: Assessment): 'superheat' | 'subcooling' | undefined =>
  method?.id === 'superheat' || method?.id === 'subcooling' ? method.id : undefined

/** A picture shows no more steps than can be told apart; what went before them is in the net mass of the first. */
export const MOST_STEPS = 24

/**
 * The steps of a visit: as found, and after every weighed move. The measure of each comes from an assessment of the
 * readings taken between its move and the next, so that it is reckoned as the finding's own is.
 */
export function chargeSteps(visit: Visit, assessment: Assessment): readonly ChargeStep[] {
  const watched = watchedBy(assessment)
  const first = Math.max(0, visit.moves.length - MOST_STEPS)
  return [undefined, ...visit.moves].slice(first).map((move, at) => {
    const i = first + at
    const net = netOf(visit.moves.slice(0, i))
    const next = visit.moves[i]
    const counts = ({ position }: Reading) =>
      position > (move?.position ?? -1) && position < (next?.position ?? Number.POSITIVE_INFINITY)
    const readings = Object.fromEntries(visit.history.filter(counts).map((reading) => [reading.what, reading]))
    const measure = watched && assess({ ...visit, readings }).measures[watched]?.quantity
    return measure ? { net, measure } : { net }
  })
}

/** Net of what went in and came out. */
export function netOf(moves: readonly Move[]): Quantity<'mass'> {
  const signed = moves.map(({ fact, mass }) => (fact.direction === 'into-system' ? mass.si : -mass.si))
  return quantity(
    'mass',
    signed.reduce((sum, mass) => sum + mass, 0),
    inQuadrature(...moves.map(({ mass }) => mass.u)),
  )
}
