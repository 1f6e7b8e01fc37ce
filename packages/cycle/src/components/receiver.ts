import type { Saturated } from '../refrigerant/properties.ts'
import { smoothStep } from '../smooth.ts'

export interface Receiver {
  readonly volume_m3: number
}

export interface ReceiverState {
  /** Share of its volume that is liquid. */
  readonly level: number
  readonly charge_kg: number
}

/** Share of the condenser over whose end the level goes from a quarter to three quarters. */
const SEAL = 0.004

/**
 * A receiver between condenser and liquid line. While it holds both liquid and vapour, liquid at its bubble point goes
 * through it and its level is free: the charge sets it. So the level is written as a steep function of how much of the
 * condenser is left for subcooling (negative when vapour still enters), which pins the condenser's outlet to the
 * bubble point over the whole range of levels.
 */
export function receiver({ volume_m3 }: Receiver, at: Saturated, liquidShare: number): ReceiverState {
  const level = smoothStep(liquidShare, SEAL)
  const density = level * at.liquidDensity_kg_m3 + (1 - level) * at.vapourDensity_kg_m3
  return { level, charge_kg: volume_m3 * density }
}
