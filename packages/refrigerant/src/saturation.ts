import { fail, type Kelvin, ok, outOfRange, type Pascal, type Problem, type Result } from '@chargewright/quantity'
import { type Engine, stateOf } from './engine.ts'
import { type SaturationLine, solveLine } from './equilibrium/saturation-line.ts'
import { caloricState } from './mixture/fixed-composition.ts'
import type { Refrigerant } from './refrigerant.ts'

/** A saturated phase of the nominal composition, at its own temperature and pressure. */
export interface SaturationPoint {
  /** Absolute. */
  readonly pressure_Pa: number
  readonly temperature_K: number
  readonly density_kg_m3: number
  /** 200 kJ/kg for the saturated liquid at 0 °C; R-14, which has none, keeps the reference of its source. */
  readonly enthalpy_J_kg: number
  readonly entropy_J_kgK: number
}

/** Where the first bubble and where the first drop appears. Of a pure fluid both share temperature and pressure. */
export interface Saturation {
  readonly bubble: SaturationPoint
  readonly dew: SaturationPoint
}

/**
 * Bubble and dew point at an absolute pressure, from the equations of state.
 *
 * @param pressure Pa absolute, from the bubble pressure at the refrigerant's lowest temperature to that at 0.998 of
 * the critical temperature, at most 0.99 of the critical pressure
 */
export function saturationAtPressure(refrigerant: Refrigerant, pressure: Pascal): Result<Saturation, Problem> {
  const { minPressure_Pa, maxPressure_Pa } = refrigerant.engine.limits.saturation
  const problem = outOfRange('pressure', pressure, minPressure_Pa, maxPressure_Pa, 'Pa')
  return problem ? fail(problem) : bothPoints(refrigerant, 'pressure', pressure)
}

/**
 * Bubble and dew point at a temperature, from the equations of state.
 *
 * @param temperature K, from the refrigerant's lowest temperature to 0.998 of its critical temperature
 */
export function saturationAtTemperature(refrigerant: Refrigerant, temperature: Kelvin): Result<Saturation, Problem> {
  const { minTemperature_K, maxTemperature_K } = refrigerant.engine.limits.saturation
  const problem = outOfRange('temperature', temperature, minTemperature_K, maxTemperature_K, 'K')
  return problem ? fail(problem) : bothPoints(refrigerant, 'temperature', temperature)
}

function bothPoints(
  { engine, kind, name }: Refrigerant,
  specified: 'temperature' | 'pressure',
  value: number,
): Result<Saturation, Problem> {
  const { bubble, dew } = engine
  if (!solveLine(bubble, specified, Math.log(value))) return fail(unsolved(name, specified, value))
  const bubblePoint = point(engine, bubble, 'given')
  if (kind === 'pure') return ok({ bubble: bubblePoint, dew: point(engine, bubble, 'incipient') })
  if (!solveLine(dew, specified, Math.log(value))) return fail(unsolved(name, specified, value))
  return ok({ bubble: bubblePoint, dew: point(engine, dew, 'given') })
}

/** The state of one phase of the line just solved; the incipient one is only of nominal composition in a pure fluid. */
function point(engine: Engine, { work }: SaturationLine, which: 'given' | 'incipient'): SaturationPoint {
  const { u, lnP } = work
  const count = engine.moleFractions.length
  const temperature = Math.exp(u[count + 1]!)
  const density = Math.exp(which === 'given' ? u[count]! : u[0]!)
  const state = caloricState()
  stateOf(engine, temperature, density, state)
  return {
    pressure_Pa: Math.exp(lnP),
    temperature_K: temperature,
    density_kg_m3: density * engine.fluid.molarMass_kg_mol,
    enthalpy_J_kg: state.enthalpy_J_kg,
    entropy_J_kgK: state.entropy_J_kgK,
  }
}

function unsolved(name: string, field: string, value: number): Problem {
  return {
    kind: 'unsolved',
    field,
    value: String(value),
    accepted: `the saturation line of ${name} did not close there`,
  }
}
