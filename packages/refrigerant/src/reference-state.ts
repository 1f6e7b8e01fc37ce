import { type SaturationLine, solveLine } from './equilibrium/saturation-line.ts'
import { caloricState, evaluateState, type FixedComposition } from './mixture/fixed-composition.ts'

/** Subtracted from every enthalpy and entropy of a refrigerant. */
export interface ReferenceState {
  readonly enthalpy_J_kg: number
  readonly entropy_J_kgK: number
}

const TEMPERATURE_K = 273.15
const ENTHALPY_J_KG = 200_000
const ENTROPY_J_KGK = 1_000

/**
 * The International Institute of Refrigeration's reference: 200 kJ/kg and 1 kJ/(kg·K) for the saturated liquid at
 * 0 °C, for a blend the liquid at its bubble point. A fluid that is supercritical there keeps its file's own offset.
 */
export function referenceState(fluid: FixedComposition, bubble: SaturationLine, hottest: number): ReferenceState {
  const reachable = TEMPERATURE_K < hottest && solveLine(bubble, 'temperature', Math.log(TEMPERATURE_K))
  if (!reachable) return { enthalpy_J_kg: 0, entropy_J_kgK: 0 }
  const state = caloricState()
  evaluateState(fluid, TEMPERATURE_K, Math.exp(bubble.work.u[bubble.work.z.length]!), state)
  return {
    enthalpy_J_kg: state.enthalpy_J_kg - ENTHALPY_J_KG,
    entropy_J_kgK: state.entropy_J_kgK - ENTROPY_J_KGK,
  }
}
