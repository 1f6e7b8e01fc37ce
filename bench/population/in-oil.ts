import type { Unit } from './unit.ts'

/** Refrigerant dissolved in the oil, kg. The sump is warmer than the gas by a part of what the compressor warms it. */
export function inOil(
  { fluid, oil_kg, oilTakes }: Unit,
  suction_Pa: number,
  suction_K: number,
  discharge_K: number,
): number {
  const sump = suction_K + 0.35 * Math.max(discharge_K - suction_K, 0)
  return (2 * oil_kg * oilTakes * suction_Pa) / fluid.dewPressure(Math.min(sump, 335))
}
