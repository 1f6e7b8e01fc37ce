import { COVERAGE, quantity, type Statement, say } from '@chargewright/quantity'
import type { Rating } from './rated-quantity.ts'

/**
 * A rating with its expanded uncertainty, to be put into a sentence. Current and capacity are in the reader's units;
 * power is in watts and mass flow in kilograms an hour for everyone, because quantities have no dimension for them.
 */
export function ratingInWords({ what, si, u }: Rating): Statement {
  switch (what) {
    case 'current':
      return say`${quantity('current', si, u)}`
    case 'capacity':
      return say`${quantity('cooling capacity', si, u)}`
    case 'power':
      return say`${Math.round(si)} ± ${Math.ceil(COVERAGE * u)} W`
    case 'mass flow':
      return say`${tenths(si)} ± ${tenths(COVERAGE * u)} kg/h`
  }
}

function tenths(kilogramsPerSecond: number): number {
  return Math.round(kilogramsPerSecond * 36_000) / 10
}
