import type { Saturated } from '../refrigerant/properties.ts'
import { unitClamp } from '../smooth.ts'

export interface Receiver {
  readonly volume_m3: number
}

export interface ReceiverState {
  /** Share of its volume that is liquid. */
  readonly level: number
  readonly charge_kg: number
}

/** The level begins once this much of the condenser is left for liquid: vapour entering would condense in the store. */
const THRESHOLD = 0.005
/** How much of the condenser, filled with liquid or lacking it, weighs as much as the whole level. Any would do. */
const YIELD = 0.2
/** Over this share the corners at empty and full are rounded. */
const CORNER = 0.02

/**
 * A receiver between condenser and liquid line. While it holds both liquid and vapour its level is free: the charge
 * sets it, and the condenser ends where its liquid just leaves boiling. Full, it lets liquid back up into the condenser;
 * empty, it lets vapour through. All three are one equation, level = clamp(wanted level + surplus / any figure): where it
 * holds, either the level is the one wanted and the surplus nought, or the vessel is full with a surplus, or empty with
 * a lack. Its slopes are those of the condenser or of the charge, never those of a step.
 *
 * @param liquidShare how much of the condenser is left for subcooling, negative when vapour still leaves it
 * @param wanted_kg what of the charge all other parts leave over
 */
export function receiver(
  { volume_m3 }: Receiver,
  at: Saturated,
  liquidShare: number,
  wanted_kg: number,
): ReceiverState {
  const { liquidDensity_kg_m3, vapourDensity_kg_m3 } = at
  const wanted = (wanted_kg / volume_m3 - vapourDensity_kg_m3) / (liquidDensity_kg_m3 - vapourDensity_kg_m3)
  const level = unitClamp(wanted + (liquidShare - THRESHOLD) / YIELD, CORNER)
  return { level, charge_kg: volume_m3 * (level * liquidDensity_kg_m3 + (1 - level) * vapourDensity_kg_m3) }
}
