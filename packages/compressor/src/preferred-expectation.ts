import type { Problem, Quantity, Result } from '@chargewright/quantity'
import type { Compressor } from './compressor.ts'
import { type Expected, expectedRating, type Operating } from './expected-rating.ts'
import type { RatedQuantity } from './rated-quantity.ts'
import { expectedFromSystem, type SystemCurve } from './system-curve.ts'

/** The air on both sides of a system. */
export interface SystemAir {
  readonly outdoor: Quantity<'temperature'>
  readonly box: Quantity<'temperature'>
}

/**
 * What to expect, from the maker's curve of the whole system where there is one for this quantity and its air was read,
 * else from the compressor's own.
 *
 * @returns the expected value; else the problem of the curve that was used
 */
export function preferredExpectation(
  what: RatedQuantity,
  system: { readonly curves: readonly SystemCurve[]; readonly air: SystemAir } | undefined,
  compressor: Compressor,
  operating: Operating,
): Result<Expected, Problem> {
  const curve = system?.curves.find((one) => one.what === what)
  return system && curve
    ? expectedFromSystem(curve, system.air.outdoor, system.air.box)
    : expectedRating(compressor, what, operating)
}
