import { type Engine, stateOf } from './engine.ts'
import { solveLine } from './equilibrium/saturation-line.ts'
import { densityBetween } from './mixture/density.ts'
import { caloricState } from './mixture/fixed-composition.ts'

/** A liquid, a gas or a supercritical fluid. */
export interface SinglePhase {
  readonly temperature_K: number
  readonly pressure_Pa: number
  readonly density_kg_m3: number
  readonly enthalpy_J_kg: number
  readonly entropy_J_kgK: number
  readonly cp_J_kgK: number
  readonly speedOfSound_m_s: number
}

/** The density is sought this far past its saturated value, so that a state on the line is found from both sides. */
const OVERLAP = 1e-6

/** The state on the liquid's or the gas's branch of the equation; undefined if that branch does not reach there. */
export function singlePhaseAt(
  engine: Engine,
  branch: 'liquid' | 'gas',
  pressure: number,
  temperature: number,
): SinglePhase | undefined {
  const density = branch === 'liquid' ? liquid(engine, pressure, temperature) : gas(engine, pressure, temperature)
  if (!(density > 0)) return undefined
  const state = caloricState()
  stateOf(engine, temperature, density, state)
  const { enthalpy_J_kg, entropy_J_kgK, cp_J_kgK, speedOfSound_m_s } = state
  return {
    temperature_K: temperature,
    pressure_Pa: pressure,
    density_kg_m3: density * engine.fluid.molarMass_kg_mol,
    enthalpy_J_kg,
    entropy_J_kgK,
    cp_J_kgK,
    speedOfSound_m_s,
  }
}

/** From the saturated liquid of the same temperature upwards; warmer than the solved line, from the reducing density. */
function liquid({ bubble, fluid, limits, moleFractions }: Engine, pressure: number, temperature: number): number {
  if (temperature > limits.saturation.maxTemperature_K) {
    return densityBetween(fluid, temperature, pressure, fluid.reducingDensity_mol_m3, 0, Number.POSITIVE_INFINITY)
  }
  if (!solveLine(bubble, 'temperature', Math.log(temperature))) return Number.NaN
  const saturated = Math.exp(bubble.work.u[moleFractions.length]!)
  const low = saturated * (1 - OVERLAP)
  return densityBetween(fluid, temperature, pressure, saturated, low, Number.POSITIVE_INFINITY)
}

/** From the ideal gas, where there is a saturated vapour not past it. */
function gas({ dew, fluid, limits, moleFractions }: Engine, pressure: number, temperature: number): number {
  const ideal = pressure / (fluid.gasConstant_J_molK * temperature)
  const { minTemperature_K, maxTemperature_K } = limits.saturation
  if (temperature < minTemperature_K || temperature > maxTemperature_K) {
    return densityBetween(fluid, temperature, pressure, ideal, 0, Number.POSITIVE_INFINITY)
  }
  if (!solveLine(dew, 'temperature', Math.log(temperature))) return Number.NaN
  const pure = moleFractions.length === 1
  const saturated = Math.exp(dew.work.u[pure ? 0 : moleFractions.length]!)
  return densityBetween(fluid, temperature, pressure, ideal, 0, saturated * (1 + OVERLAP))
}
