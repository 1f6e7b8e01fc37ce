import { type Quantity, quantity, type Statement, say } from '@chargewright/quantity'

/** A difference in words, to stand before what it is taken from: on which side, and never with a sign. */
export function byHowFar({ dimension, si, u }: Quantity<'temperature difference'>): Statement {
  const size = quantity(dimension, Math.abs(si), u)
  return si < 0 ? say`${size} below` : say`${size} above`
}
