import { type CaloricState, caloricState, evaluateState, type FixedComposition } from './fixed-composition.ts'

/** Temperature and molar density, and after solving the entropy. */
export interface Point {
  temperature: number
  density: number
  entropy_J_kgK: number
}

const MAX_ITERATIONS = 30
const LAST_STEP = 1e-5
const MAX_STEP = 0.1

const state: CaloricState = caloricState()

/**
 * The single-phase state at a pressure and an enthalpy (without reference), by Newton in ln T and ln ρ from the values
 * in `point`, which it must be near: the caller walks away from the saturation line in small steps.
 */
export function solveByEnthalpy(fluid: FixedComposition, pressure: number, enthalpy: number, point: Point): boolean {
  for (let k = 0; k < MAX_ITERATIONS; k++) {
    const { temperature, density } = point
    evaluateState(fluid, temperature, density, state)
    const volume = 1 / (density * fluid.molarMass_kg_mol)
    const dp = pressure - state.pressure_Pa
    const dh = enthalpy - state.enthalpy_J_kg
    // At constant temperature dh = v·(1 − T·α)·dp, at constant pressure dh = cp·dT.
    const dLnT = (dh - volume * (1 - state.expansion) * dp) / (state.cp_J_kgK * temperature)
    const dLnRho = dp / state.stiffness_Pa - state.expansion * dLnT
    const size = Math.max(Math.abs(dLnT), Math.abs(dLnRho))
    if (!(size < Number.POSITIVE_INFINITY)) return false
    const damping = size > MAX_STEP ? MAX_STEP / size : 1
    point.temperature = temperature * Math.exp(damping * dLnT)
    point.density = density * Math.exp(damping * dLnRho)
    if (size < LAST_STEP) {
      point.entropy_J_kgK = state.entropy_J_kgK + (dh - volume * dp) / temperature
      return true
    }
  }
  return false
}
