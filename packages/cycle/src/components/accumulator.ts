import type { Saturated } from '../refrigerant/properties.ts'

/** A vessel before the compressor that gives liquid back through a bleed hole only as fast as the hole lets it. */
export interface Accumulator {
  readonly volume_m3: number
  /** Share of liquid in the rated flow that the hole passes under a full vessel. */
  readonly bleed: number
}

/**
 * Refrigerant it holds, kg. Whatever liquid arrives leaves through the hole in the steady state, under a head that
 * grows with the square of that flow: the level. Full when more arrives than the hole can pass; the rest carries over.
 */
export function accumulatorCharge(
  { volume_m3, bleed }: Accumulator,
  at: Saturated,
  gasDensity: number,
  liquidShare: number,
): number {
  const head = (Math.max(liquidShare, 0) / bleed) ** 2
  const level = head / (1 + head)
  return volume_m3 * (level * at.liquidDensity_kg_m3 + (1 - level) * gasDensity)
}
