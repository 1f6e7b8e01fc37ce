import type { Saturated } from './fluid.ts'
import type { Unit } from './unit.ts'

/**
 * Refrigerant in the accumulator, kg. Its level rises until the bleed passes as much liquid as the coil leaves, so that
 * what comes in wet goes out as wet.
 */
export function inAccumulator(
  { accumulator_m3, accumulatorWetness }: Unit,
  at: Saturated,
  density: number,
  quality: number,
): number {
  if (accumulator_m3 === 0) return 0
  const full = quality < 1 ? 1 - Math.exp((-2 * (1 - quality)) / accumulatorWetness) : 0
  return accumulator_m3 * (full * at.rhoLiquid + (1 - full) * Math.min(density, at.rhoVapour))
}
