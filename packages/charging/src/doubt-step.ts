import { type Quantity, type Statement, say } from '@chargewright/quantity'
import type { Dose } from './assessment.ts'

/** A mass is questioned and not refused: what went in went in. Own choice: what a shut-off valve lets by is less. */
const QUESTIONED_FROM = 1.25

/** What is doubtful about a mass that is entered for a step; undefined where the step asked for about as much, or less. */
export function doubtStep(mass: Quantity<'mass'>, { mass: asked }: Dose): Statement | undefined {
  if (mass.si <= QUESTIONED_FROM * asked.si) return undefined
  return say`More than the ${asked} that were asked for: look at the scale again, and enter what truly moved`
}
