import type { Dimension, Quantity } from '@chargewright/quantity'

/** Where a value lies against a band. `too-close`: an edge lies within the standard uncertainty of the value. */
export type Side = 'below' | 'inside' | 'above' | 'too-close'

/**
 * Compares a value with a band, with a guard of one standard uncertainty on either side of each edge (JCGM 106:2012,
 * 8.3.2 with r = 1/2 of the expanded uncertainty): a verdict of below or above is then wrong in fewer than one case in
 * six, and of inside likewise. NaN is too close to tell.
 */
export function againstBand<D extends Dimension>(value: Quantity<D>, low: number, high: number): Side {
  const u = value.u ?? 0
  const clear = (edge: number) => Math.abs(value.si - edge) > u || (u === 0 && value.si === edge)
  if (!clear(low) || !clear(high)) return 'too-close'
  if (value.si < low) return 'below'
  return value.si > high ? 'above' : 'inside'
}

/** Compares a value with one limit in the same way. */
export function againstLimit<D extends Dimension>(value: Quantity<D>, limit: Quantity<D>): Exclude<Side, 'inside'> {
  const u = value.u ?? 0
  const apart = value.si - limit.si
  if (!(Math.abs(apart) > u)) return 'too-close'
  return apart < 0 ? 'below' : 'above'
}
