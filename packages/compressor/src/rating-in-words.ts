import { COVERAGE, quantity, type Statement, say } from '@chargewright/quantity'
import type { Rating } from './rated-quantity.ts'

/**
 * A rating with its expanded uncertainty where it has one, to be put into a sentence. Current and capacity are in the
 * reader's units; power is in watts and mass flow in kilograms an hour for everyone, because quantities have no
 * dimension for them.
 */
export function ratingInWords({ what, si, u }: Rating): Statement {
  switch (what) {
    case 'current':
      return say`${quantity('current', si, u > 0 ? u : undefined)}`
    case 'capacity':
      return say`${quantity('cooling capacity', si, u > 0 ? u : undefined)}`
    case 'power':
      return say`${Math.round(si)}${band(Math.ceil(COVERAGE * u))} W`
    case 'mass flow':
      return say`${tenths(si)}${band(tenths(COVERAGE * u))} kg/h`
  }
}

const band = (expanded: number): Statement | string => (expanded > 0 ? say` ± ${expanded}` : '')

function tenths(kilogramsPerSecond: number): number {
  return Math.round(kilogramsPerSecond * 36_000) / 10
}
