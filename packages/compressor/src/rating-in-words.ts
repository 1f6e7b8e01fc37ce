import { type Dimension, quantity, type Statement, say } from '@chargewright/quantity'
import type { RatedQuantity, Rating } from './rated-quantity.ts'

const DIMENSIONS: Readonly<Record<RatedQuantity, Dimension>> = {
  'mass flow': 'mass flow',
  power: 'power',
  current: 'current',
  capacity: 'cooling capacity',
}

/** A rating with its expanded uncertainty where it has one, to be put into a sentence in the reader's units. */
export function ratingInWords({ what, si, u }: Rating): Statement {
  return say`${quantity(DIMENSIONS[what], si, u)}`
}
