import { fail, type Kelvin, ok, outOfRange, type Pascal, type Problem, type Result } from '@chargewright/quantity'
import type { Refrigerant } from './refrigerant.ts'
import { saturationAtPressure } from './saturation.ts'
import { singlePhaseAt } from './single-phase.ts'
import { type TwoPhase, twoPhaseAt } from './two-phase.ts'

/** A state of the refrigerant. In two-phase, cp and the speed of sound have no meaning and are absent. */
export interface State {
  readonly temperature_K: number
  /** Absolute. */
  readonly pressure_Pa: number
  readonly density_kg_m3: number
  readonly enthalpy_J_kg: number
  readonly entropy_J_kgK: number
  readonly cp_J_kgK?: number
  readonly speedOfSound_m_s?: number
  /** `supercritical` above both the critical temperature and the critical pressure. */
  readonly phase: 'liquid' | 'vapour' | 'supercritical' | 'two-phase'
  /** Vapour share of the mass, in two-phase only. */
  readonly quality?: number
}

/** Below the vapour pressure of every refrigerant at its lowest temperature, and far below any vacuum a pump draws. */
const MIN_PRESSURE_PA = 1e-5
/** On the line of a pure fluid, and of an azeotrope, p and T say nothing about how much has evaporated. */
const ON_THE_LINE_K = 1e-6
/** No pressure above this multiple of the critical one can be two-phase near the critical temperature. */
const CLEAR_OF_CRITICAL = 1.02

/**
 * The state at a pressure and a temperature, from the equations of state.
 *
 * @param pressure Pa absolute, 1e-5 Pa to the refrigerant's `range.maxPressure_Pa`
 * @param temperature K, within the refrigerant's `range`
 * @returns also a problem exactly on the line of a pure fluid, where a quality is needed, and next to the critical point
 */
export function stateAt(refrigerant: Refrigerant, pressure: Pascal, temperature: Kelvin): Result<State, Problem> {
  const { range, engine } = refrigerant
  const problem =
    outOfRange('pressure', pressure, MIN_PRESSURE_PA, range.maxPressure_Pa, 'Pa') ??
    outOfRange('temperature', temperature, range.minTemperature_K, range.maxTemperature_K, 'K')
  if (problem) return fail(problem)
  const { saturation } = engine.limits
  if (pressure > saturation.maxPressure_Pa) return aboveTheDome(refrigerant, pressure, temperature)
  if (pressure < saturation.minPressure_Pa) return singlePhase(refrigerant, pressure, temperature, 'vapour')

  const lines = saturationAtPressure(refrigerant, pressure)
  if (!lines.ok) return lines
  const { bubble, dew } = lines.value
  if (temperature < bubble.temperature_K - ON_THE_LINE_K)
    return singlePhase(refrigerant, pressure, temperature, 'liquid')
  if (temperature > dew.temperature_K + ON_THE_LINE_K) return singlePhase(refrigerant, pressure, temperature, 'vapour')
  if (dew.temperature_K - bubble.temperature_K <= 2 * ON_THE_LINE_K) return fail(onTheLine(pressure, temperature))
  const flash = twoPhaseAt(refrigerant, lines.value, 'temperature', temperature)
  return flash ? ok(twoPhaseState(flash)) : fail(unsolved(pressure, 'temperature', `${temperature} K`))
}

/**
 * The two-phase state at a pressure with a given share of vapour; a blend's liquid and vapour then differ in
 * composition, and the temperature lies between bubble and dew point.
 *
 * @param pressure Pa absolute, as for `saturationAtPressure`
 * @param quality vapour share of the mass, 0 (bubble point) to 1 (dew point)
 */
export function stateAtQuality(refrigerant: Refrigerant, pressure: Pascal, quality: number): Result<State, Problem> {
  const problem = outOfRange('quality', quality, 0, 1, 'kg/kg')
  if (problem) return fail(problem)
  const lines = saturationAtPressure(refrigerant, pressure)
  if (!lines.ok) return lines
  const flash = twoPhaseAt(refrigerant, lines.value, 'quality', quality)
  return flash ? ok(twoPhaseState(flash)) : fail(unsolved(pressure, 'quality', String(quality)))
}

/** Above every saturation pressure that is solved: liquid, gas or supercritical, but not next to the critical point. */
function aboveTheDome(refrigerant: Refrigerant, pressure: number, temperature: number): Result<State, Problem> {
  const { critical, engine } = refrigerant
  const { bubble, dew, limits } = engine
  const warmest = Math.exp(Math.max(bubble.lnT.at(-1)!, dew.lnT.at(-1)!, Math.log(critical.temperature_K)))
  const top = Math.exp(Math.max(bubble.lnP.at(-1)!, dew.lnP.at(-1)!))
  const highest = Math.max(CLEAR_OF_CRITICAL * critical.pressure_Pa, top)
  if (pressure < highest && temperature < warmest) {
    const lines = saturationAtPressure(refrigerant, limits.saturation.maxPressure_Pa as Pascal)
    if (!lines.ok) return lines
    if (temperature >= lines.value.bubble.temperature_K) return fail(tooCritical(refrigerant, pressure, temperature))
    return singlePhase(refrigerant, pressure, temperature, 'liquid')
  }
  if (temperature < critical.temperature_K) return singlePhase(refrigerant, pressure, temperature, 'liquid')
  const phase = pressure > critical.pressure_Pa ? 'supercritical' : 'vapour'
  return singlePhase(refrigerant, pressure, temperature, phase)
}

function singlePhase(
  { engine }: Refrigerant,
  pressure: number,
  temperature: number,
  phase: 'liquid' | 'vapour' | 'supercritical',
): Result<State, Problem> {
  const state = singlePhaseAt(engine, phase === 'liquid' ? 'liquid' : 'gas', pressure, temperature)
  return state ? ok({ ...state, phase }) : fail(unsolved(pressure, 'temperature', `${temperature} K`))
}

const twoPhaseState = (state: TwoPhase): State => ({ ...state, phase: 'two-phase' })

const unsolved = (pressure: number, field: string, value: string): Problem => ({
  kind: 'unsolved',
  field,
  value,
  accepted: `the equations of state did not close at ${pressure} Pa`,
})

const onTheLine = (pressure: number, temperature: number): Problem => ({
  kind: 'ambiguous',
  field: 'temperature',
  value: `${temperature} K at ${pressure} Pa`,
  accepted: 'a quality instead: this is the saturation line, where pressure and temperature do not fix the state',
})

function tooCritical({ critical, name }: Refrigerant, pressure: number, temperature: number): Problem {
  return {
    kind: 'unsolved',
    field: 'temperature',
    value: `${temperature} K at ${pressure} Pa`,
    accepted: `too near the critical point of ${name}, ${critical.temperature_K.toFixed(2)} K and ${critical.pressure_Pa.toFixed(0)} Pa`,
  }
}
