import { fail, type Problem, type Quantity, type Result } from '@chargewright/quantity'
import type { Compressor } from './compressor.ts'
import { type Expected, expectedRating, type Operating } from './expected-rating.ts'
import type { RatedQuantity } from './rated-quantity.ts'
import { expectedFromSystem, type SystemCurve } from './system-curve.ts'

/** The maker's curves of the whole system, and the air it stands in. */
export interface SystemAsFound {
  readonly curves: readonly SystemCurve[]
  readonly outdoor: Quantity<'temperature'>
  readonly box: Quantity<'temperature'>
}

/** The maker's figures of the compressor, and how it runs. */
export interface CompressorAsFound {
  readonly compressor: Compressor
  readonly operating: Operating
}

/**
 * What to expect, from the maker's curve of the whole system where there is one for this quantity, else from the
 * compressor's own.
 *
 * @returns the expected value; `missing` with neither; else the problem of the curve that was used
 */
export function preferredExpectation(
  what: RatedQuantity,
  { system, compressor }: { readonly system?: SystemAsFound; readonly compressor?: CompressorAsFound },
): Result<Expected, Problem> {
  const curve = system?.curves.find((one) => one.what === what)
  if (system && curve) return expectedFromSystem(curve, system.outdoor, system.box)
  if (compressor) return expectedRating(compressor.compressor, what, compressor.operating)
  const accepted = 'a curve of the system, or the figures of the compressor'
  return fail({ kind: 'missing', field: `what to expect of the ${what}`, value: 'nothing', accepted })
}
