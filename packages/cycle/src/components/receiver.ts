import type { Saturated } from '../refrigerant/properties.ts'
import { smoothStep } from '../smooth.ts'

export interface Receiver {
  readonly volume_m3: number
  /** Share of the condenser over whose end the level goes from 15 % to 85 %; wide only on the way to a solution. */
  readonly seal: number
}

export interface ReceiverState {
  /** Share of its volume that is liquid. */
  readonly level: number
  readonly charge_kg: number
}

export const SEAL = 0.004
/** The level begins once this much of the condenser is left for liquid: vapour entering would condense in the store. */
const THRESHOLD = 0.005

/**
 * A receiver between condenser and liquid line. While it holds both liquid and vapour, liquid near its bubble point
 * goes through it and its level is free: the charge sets it. So the level is written as a steep function of how much
 * of the condenser is left for subcooling (negative when vapour still enters), which pins the condenser's outlet to
 * the bubble point over the whole range of levels.
 */
export function receiver({ volume_m3, seal }: Receiver, at: Saturated, liquidShare: number): ReceiverState {
  const level = smoothStep(liquidShare - THRESHOLD, seal / 2)
  const density = level * at.liquidDensity_kg_m3 + (1 - level) * at.vapourDensity_kg_m3
  return { level, charge_kg: volume_m3 * density }
}
