import { type Assessment, assess, type FindingKind } from '@chargewright/charging'
import { type Quantity, quantity } from '@chargewright/quantity'
import type { Origin, Visit } from '@chargewright/visit'
import { MOST_STEPS, netOf } from './charge-steps.ts'

/** What was known of the way to the target before a step, or at the end. */
export interface StepLeft {
  /** Net of what had gone in so far. */
  readonly net: Quantity<'mass'>
  readonly finding: FindingKind
  /** The net at which the target lies in nine of ten cases; absent where no twin sized the step. */
  readonly aim?: { readonly low: number; readonly high: number }
}

/**
 * What every assessment on the way would have said, each with the entries made until then: as found, and after every
 * weighed move.
 */
export function stepsLeft(visit: Visit, assessment: Assessment): readonly StepLeft[] {
  const first = Math.max(0, visit.moves.length - MOST_STEPS)
  return [...visit.moves, undefined].slice(first).map((next, i) => {
    const net = netOf(visit.moves.slice(0, first + i))
    const { finding } = next ? assess(visitBefore(visit, next.position)) : assessment
    const { interval, direction } = finding.dose ?? {}
    if (!interval) return { net, finding: finding.kind }
    const ends = [interval.low.si, interval.high.si].map(
      (mass) => net.si + (direction === 'into-system' ? mass : -mass),
    )
    return { net, finding: finding.kind, aim: { low: Math.min(...ends), high: Math.max(...ends) } }
  })
}

/** The visit as it stood before an entry. What is said of the system holds throughout: it was as true then. */
function visitBefore(visit: Visit, position: number): Visit {
  const until = <T extends Origin>(items: readonly T[]) => items.filter((item) => item.position < position)
  const history = until(visit.history)
  const observations = Object.entries(visit.observations).filter(([, seen]) => seen.position < position)
  return {
    ...visit,
    history,
    readings: Object.fromEntries(history.map((reading) => [reading.what, reading])),
    observations: Object.fromEntries(observations),
    moves: until(visit.moves),
    adjustments: until(visit.adjustments),
    waits: until(visit.waits),
  }
}

export const massOf = (si: number): Quantity<'mass'> => quantity('mass', si)
