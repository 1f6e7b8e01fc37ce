import { fail, kelvin, ok, type Problem, pascal, type Result } from '@chargewright/quantity'
import { type Refrigerant, saturationAtPressure, saturationAtTemperature, stateAt } from '@chargewright/refrigerant'
import { type CubicCurves, cubicCurves, interpolate, placeIn } from './cubic-curves.ts'
import { type Transport, transportAt } from './transport.ts'
import { isentropicIn, stateIn, type VapourState, type VapourTable, vapourTable } from './vapour-table.ts'

/** Bubble and dew point at one pressure, with what the cycle needs of both. */
export interface Saturated extends Transport {
  /** Absolute. */
  readonly pressure_Pa: number
  readonly bubble_K: number
  readonly dew_K: number
  readonly liquidEnthalpy_J_kg: number
  readonly vapourEnthalpy_J_kg: number
  readonly liquidDensity_kg_m3: number
  readonly vapourDensity_kg_m3: number
  readonly vapourEntropy_J_kgK: number
  /** Along the saturation line, which for a liquid far from critical is its cp. */
  readonly liquidHeat_J_kgK: number
  /** Mean cp over the first 15 K of superheat. */
  readonly vapourHeat_J_kgK: number
}

/** A liquid known by its enthalpy: compression is neglected, so it has the temperature of a liquid just boiling. */
export interface Liquid {
  readonly temperature_K: number
  readonly bubblePressure_Pa: number
  readonly density_kg_m3: number
}

/** Everything the cycle asks of a refrigerant, from tables built off its equation of state. */
export interface Properties {
  readonly name: string
  readonly critical: { readonly temperature_K: number; readonly pressure_Pa: number }
  /** Between these pressures the tables hold; beyond them they go on straight. */
  readonly range: { readonly min_Pa: number; readonly max_Pa: number }
  saturated(pressure: number): Saturated
  liquid(enthalpy: number): Liquid
  /** Vapour, or below the dew point the homogeneous mixture. */
  vapour(at: Saturated, enthalpy: number): VapourState
  /** Enthalpy at the pressure of `at` with this entropy. */
  isentropic(at: Saturated, entropy: number): number
  /** Pressure at which the dew point is this temperature. */
  dewPressure(temperature: number): number
  bubblePressure(temperature: number): number
  /** Of a liquid at this temperature, compression neglected. */
  liquidEnthalpy(temperature: number): number
}

const NODES = 81
/** No evaporator of the covered applications is colder. */
const COLDEST_DEW_K = 203.15
/** Some equations of state begin above that; the table keeps clear of their very end. */
const CLEAR_OF_RANGE_K = 1
/** Nearer the critical pressure no system of this kind still runs. */
const HIGHEST_SHARE_OF_CRITICAL = 0.9

const built = new Map<string, Result<Properties, Problem>>()

/**
 * The tables of one refrigerant, built once and kept: saturation by cubic splines over ln p, vapour by Chebyshev series.
 *
 * @returns a problem for a refrigerant whose critical temperature is too low for a condenser in outdoor air
 * @accuracy against the equation of state from −60 °C to 0.85 of the critical pressure: see `properties.test.ts`
 */
export function propertiesOf(refrigerant: Refrigerant): Result<Properties, Problem> {
  const known = built.get(refrigerant.name)
  if (known) return known
  const made = build(refrigerant)
  built.set(refrigerant.name, made)
  return made
}

/** Columns of the saturation table. */
const BUBBLE = 0
const DEW = 1
const HF = 2
const HG = 3
const RHO_F = 4
const LN_RHO_G = 5
const SG = 6
const CF = 7
const MU_F = 8
const MU_G = 9
const SIGMA = 10
const CG = 11
const COLUMNS = 12
const MEAN_SUPERHEAT_K = 15
const LOWEST_CRITICAL_K = 330

function build(refrigerant: Refrigerant): Result<Properties, Problem> {
  const { critical, name, molarMass_kg_mol } = refrigerant
  if (critical.temperature_K < LOWEST_CRITICAL_K) {
    const accepted = 'a refrigerant that condenses in outdoor air; this one is above its critical temperature there'
    return fail({ kind: 'unknown', field: 'refrigerant', value: name, accepted })
  }
  const coldest_K = Math.max(COLDEST_DEW_K, refrigerant.range.minTemperature_K + CLEAR_OF_RANGE_K)
  const coldest = saturationAtTemperature(refrigerant, kelvin(coldest_K))
  if (!coldest.ok) return coldest
  const [low, high] = [
    Math.log(coldest.value.dew.pressure_Pa),
    Math.log(HIGHEST_SHARE_OF_CRITICAL * critical.pressure_Pa),
  ]
  const columns = Array.from({ length: COLUMNS }, () => new Float64Array(NODES))
  for (let i = 0; i < NODES; i++) {
    const at = saturationAtPressure(refrigerant, pascal(Math.exp(low + ((high - low) * i) / (NODES - 1))))
    if (!at.ok) return at
    const { bubble, dew } = at.value
    const warmer = stateAt(refrigerant, pascal(dew.pressure_Pa), kelvin(dew.temperature_K + MEAN_SUPERHEAT_K))
    if (!warmer.ok) return warmer
    const transport = transportAt(bubble.temperature_K, { ...critical, molarMass_kg_mol })
    const row = [
      bubble.temperature_K,
      dew.temperature_K,
      bubble.enthalpy_J_kg,
      dew.enthalpy_J_kg,
      bubble.density_kg_m3,
      Math.log(dew.density_kg_m3),
      dew.entropy_J_kgK,
      0,
      transport.liquidViscosity_Pas,
      transport.vapourViscosity_Pas,
      transport.surfaceTension_N_m,
      (warmer.value.enthalpy_J_kg - dew.enthalpy_J_kg) / MEAN_SUPERHEAT_K,
    ]
    for (let c = 0; c < COLUMNS; c++) columns[c]![i] = row[c]!
  }
  columns[CF]!.set(slope(columns[HF]!, columns[BUBBLE]!))
  const saturation = cubicCurves(low, high, columns)
  const saturated = (pressure: number) => saturatedIn(saturation, pressure)
  const vapour = vapourTable(refrigerant, saturated, low, high)
  if (!vapour.ok) return vapour
  return ok(properties(refrigerant, low, high, columns, saturated, vapour.value))
}

function properties(
  { name, critical }: Refrigerant,
  low: number,
  high: number,
  columns: readonly Float64Array[],
  saturated: Properties['saturated'],
  vapour: VapourTable,
): Properties {
  const lnP = Float64Array.from({ length: NODES }, (_, i) => low + ((high - low) * i) / (NODES - 1))
  const byEnthalpy = inverse(columns[HF]!, [lnP, columns[BUBBLE]!, columns[RHO_F]!])
  const byDew = inverse(columns[DEW]!, [lnP])
  const byBubble = inverse(columns[BUBBLE]!, [lnP, columns[HF]!])
  return {
    name,
    critical,
    range: { min_Pa: Math.exp(low), max_Pa: Math.exp(high) },
    saturated,
    liquid: (enthalpy) => {
      const place = placeIn(byEnthalpy, enthalpy)
      return {
        bubblePressure_Pa: Math.exp(interpolate(byEnthalpy, 0, place)),
        temperature_K: interpolate(byEnthalpy, 1, place),
        density_kg_m3: interpolate(byEnthalpy, 2, place),
      }
    },
    vapour: (at, enthalpy) => stateIn(vapour, at, enthalpy),
    isentropic: (at, entropy) => isentropicIn(vapour, at, entropy),
    dewPressure: (temperature) => Math.exp(interpolate(byDew, 0, placeIn(byDew, temperature))),
    liquidEnthalpy: (temperature) => interpolate(byBubble, 1, placeIn(byBubble, temperature)),
    bubblePressure: (temperature) => Math.exp(interpolate(byBubble, 0, placeIn(byBubble, temperature))),
  }
}

function saturatedIn(table: CubicCurves, pressure: number): Saturated {
  const place = placeIn(table, Math.log(pressure))
  return {
    pressure_Pa: pressure,
    bubble_K: interpolate(table, BUBBLE, place),
    dew_K: interpolate(table, DEW, place),
    liquidEnthalpy_J_kg: interpolate(table, HF, place),
    vapourEnthalpy_J_kg: interpolate(table, HG, place),
    liquidDensity_kg_m3: interpolate(table, RHO_F, place),
    // Below the table it goes to zero with the pressure.
    vapourDensity_kg_m3: Math.exp(interpolate(table, LN_RHO_G, place)),
    vapourEntropy_J_kgK: interpolate(table, SG, place),
    liquidHeat_J_kgK: interpolate(table, CF, place),
    vapourHeat_J_kgK: interpolate(table, CG, place),
    liquidViscosity_Pas: interpolate(table, MU_F, place),
    vapourViscosity_Pas: interpolate(table, MU_G, place),
    surfaceTension_N_m: interpolate(table, SIGMA, place),
  }
}

/** dy/dx at the nodes, from the splines of both over their index. */
function slope(y: Float64Array, x: Float64Array): Float64Array {
  const table = cubicCurves(0, y.length - 1, [y, x])
  return y.map((_, i) => {
    const [a, b] = [placeIn(table, i - 1e-3), placeIn(table, i + 1e-3)]
    return (interpolate(table, 0, b) - interpolate(table, 0, a)) / (interpolate(table, 1, b) - interpolate(table, 1, a))
  })
}

const INVERSE_NODES = 121

/** The columns over evenly spaced values of a rising quantity, by bisection in its spline. */
function inverse(rising: Float64Array, columns: readonly Float64Array[]): CubicCurves {
  const table = cubicCurves(0, rising.length - 1, [rising, ...columns])
  const [first, last] = [rising[0]!, rising.at(-1)!]
  const result = columns.map(() => new Float64Array(INVERSE_NODES))
  for (let i = 0; i < INVERSE_NODES; i++) {
    const wanted = first + ((last - first) * i) / (INVERSE_NODES - 1)
    let [low, high] = [0, rising.length - 1]
    for (let k = 0; k < 50; k++) {
      const middle = (low + high) / 2
      if (interpolate(table, 0, placeIn(table, middle)) < wanted) low = middle
      else high = middle
    }
    const place = placeIn(table, (low + high) / 2)
    for (const [c, column] of result.entries()) column[i] = interpolate(table, c + 1, place)
  }
  return cubicCurves(first, last, result)
}
