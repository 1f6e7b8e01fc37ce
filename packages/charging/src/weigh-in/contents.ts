import {
  fail,
  kelvin,
  ok,
  type Problem,
  pascal,
  type Quantity,
  type Result,
  type Statement,
  say,
} from '@chargewright/quantity'
import { type Refrigerant, saturationAtTemperature, stateAt } from '@chargewright/refrigerant'

/** What fills a volume: how dense it is, and in words. */
export interface Contents {
  readonly density_kg_m3: number
  /** Standard uncertainty, from that of the temperature and the pressure. */
  readonly u_kg_m3: number
  readonly words: Statement
  readonly source: string
}

/**
 * Liquid at a temperature, taken as just saturated. Ten kelvin of subcooling at 100 °F would make it denser by under 1 %
 * (R-410A 0.9 %, R-22 0.3 %), less than the bore of a line is known.
 *
 * @param temperature of the liquid, within the saturation line of the refrigerant
 */
export function liquidAt(refrigerant: Refrigerant, temperature: Quantity<'temperature'>): Result<Contents, Problem> {
  const density = (T: number) => {
    const at = saturationAtTemperature(refrigerant, kelvin(T))
    return at.ok ? ok(at.value.bubble.density_kg_m3) : at
  }
  return contents(refrigerant, say`liquid at ${temperature}`, density, [beside(temperature, -1)])
}

/**
 * Saturated vapour, as it stands over liquid of the same temperature.
 *
 * @param temperature of both, within the saturation line of the refrigerant
 */
export function vapourOver(refrigerant: Refrigerant, temperature: Quantity<'temperature'>): Result<Contents, Problem> {
  const density = (T: number) => {
    const at = saturationAtTemperature(refrigerant, kelvin(T))
    return at.ok ? ok(at.value.dew.density_kg_m3) : at
  }
  return contents(refrigerant, say`saturated vapour`, density, [beside(temperature, -1)])
}

/**
 * Vapour at an absolute pressure and a temperature.
 *
 * @returns also a problem where the refrigerant is not vapour there
 */
export function vapourAt(
  refrigerant: Refrigerant,
  pressure: Quantity<'absolute pressure'>,
  temperature: Quantity<'temperature'>,
): Result<Contents, Problem> {
  const density = (p: number, T: number) => {
    const state = stateAt(refrigerant, pascal(p), kelvin(T))
    if (!state.ok) return state
    return state.value.phase === 'vapour' ? ok(state.value.density_kg_m3) : fail(notVapour(state.value.phase, p, T))
  }
  return contents(refrigerant, say`vapour at ${pressure} and ${temperature}`, density, [
    beside(pressure, -1),
    beside(temperature, 1),
  ])
}

/** A temperature or pressure, and the point one standard uncertainty away on the side where the phase does not end. */
interface Input {
  readonly at: number
  readonly beside: number
}

const beside = ({ si, u = 0 }: Quantity, side: 1 | -1): Input => ({ at: si, beside: si + side * u })

/** The uncertainty is the change seen beside each input, in quadrature (JCGM 100:2008, 5.1.3, note 2). */
function contents(
  { name }: Refrigerant,
  words: Statement,
  density: (...inputs: number[]) => Result<number, Problem>,
  inputs: readonly Input[],
): Result<Contents, Problem> {
  const here = density(...inputs.map(({ at }) => at))
  if (!here.ok) return here
  const changes: number[] = []
  for (const moved of inputs) {
    const there = density(...inputs.map((input) => (input === moved ? input.beside : input.at)))
    if (!there.ok) return there
    changes.push(there.value - here.value)
  }
  const source = `equation of state of ${name}`
  return ok({ density_kg_m3: here.value, u_kg_m3: Math.hypot(...changes), words, source })
}

const notVapour = (phase: string, p: number, T: number): Problem => ({
  kind: 'unsolved',
  field: 'vapour in the line',
  value: `${T} K at ${p} Pa`,
  accepted: `it is ${phase} there, not vapour`,
})
