import type { RatingPolynomial } from './rating-polynomial.ts'

/** A compressor as its maker rates it: one polynomial for each quantity that is known, and the conditions they are for. */
export interface Compressor {
  readonly ratings: readonly RatingPolynomial[]
  /** The gas that the ratings are for: so much above the suction dew temperature, or at one temperature throughout. */
  readonly returnGas:
    | { readonly kind: 'superheat'; readonly superheat_K: number }
    | { readonly kind: 'temperature'; readonly temperature_K: number }
  /** The supply that the ratings are for, where it is known. */
  readonly motor?: Motor
}

export interface Motor {
  readonly voltage_V: number
  readonly phases: 1 | 3
}

/** Temperature of the return gas that the ratings are for, K. */
export function ratedReturnGas({ returnGas }: Compressor, suctionDew_K: number): number {
  return returnGas.kind === 'superheat' ? suctionDew_K + returnGas.superheat_K : returnGas.temperature_K
}
