import { fail, type Kelvin, ok, outOfRange, type Pascal, type Problem, type Result } from '@chargewright/quantity'
import { psychrometrics } from './psychrometrics.ts'

/** One state of moist air, every field of it; all from one humidity ratio. */
export interface MoistAir {
  readonly dryBulb_K: number
  /** Of a wetted wick that has come to rest; below 0 °C the wick is ice. */
  readonly wetBulb_K: number
  /** Below 0.01 °C the frost point. */
  readonly dewPoint_K: number
  /** Fraction, 0 to 1. */
  readonly relativeHumidity: number
  /** kg of water per kg of dry air. */
  readonly humidityRatio: number
  /** Per kg of dry air; zero for dry air and liquid water at 0 °C. */
  readonly enthalpy_J_kg: number
  /** kg of moist air per m³. */
  readonly density_kg_m3: number
  readonly pressure_Pa: number
}

/** One of the three ways in which a technician knows how humid the air is. */
export type Humidity =
  | { readonly wetBulb: Kelvin }
  | { readonly relativeHumidity: number }
  | { readonly dewPoint: Kelvin }

/**
 * The state of moist air from dry bulb, one measure of its humidity, and the pressure of the site. What was given comes
 * back unchanged; wet bulb and dew point that were not are solved to 0.001 K.
 *
 * @param dryBulb −40 °C to 75 °C (233.15 K to 348.15 K)
 * @param humidity wet bulb or dew point from that of bone-dry air up to the dry bulb; relative humidity 0 to 1.
 *   Bone-dry air is air with 10⁻⁷ kg of water per kg, below which nothing here changes any more.
 * @param pressure absolute, 50 kPa to 120 kPa (5 500 m to below sea level), so that no air in range could boil water
 * @returns the state; else the first input that is out of its range, with that range
 * @source ASHRAE Handbook – Fundamentals 2017, ch. 1, eq. 5, 6, 11, 20, 22, 26, 30, 33, 35 (perfect gas)
 * @accuracy against the handbook's real-gas table of saturated air at sea level: humidity ratio 0.4 % to 0.6 % low
 *   from 5 °C to 50 °C, because the enhancement factor is left out; enthalpy 0.2 % low at 25 °C
 *
 * Around 0 °C the handbook gives one humidity for two wet bulbs, on water and up to 1 K lower on ice. A wet bulb that
 * was not given is either of them there; the other fields do not depend on it.
 */
export function moistAir(dryBulb: Kelvin, humidity: Humidity, pressure: Pascal): Result<MoistAir, Problem> {
  const problem =
    outOfRange('dry bulb', dryBulb, MIN_K, MAX_K, 'K') ??
    outOfRange('air pressure', pressure, MIN_PA, MAX_PA, 'Pa') ??
    outOfReach(dryBulb, humidity, pressure)
  if (problem) return fail(problem)

  const t = dryBulb - ZERO_C
  const W = humidityRatio(t, humidity, pressure)
  return ok({
    dryBulb_K: dryBulb,
    wetBulb_K: 'wetBulb' in humidity ? humidity.wetBulb : wetBulb(dryBulb, W, pressure),
    dewPoint_K: 'dewPoint' in humidity ? humidity.dewPoint : dewPoint(dryBulb, W, pressure),
    relativeHumidity:
      'relativeHumidity' in humidity
        ? humidity.relativeHumidity
        : Math.min(1, psychrometrics.GetRelHumFromHumRatio(t, W, pressure)),
    humidityRatio: W,
    enthalpy_J_kg: psychrometrics.GetMoistAirEnthalpy(t, W),
    density_kg_m3: psychrometrics.GetMoistAirDensity(t, W, pressure),
    pressure_Pa: pressure,
  })
}

const ZERO_C = 273.15
const MIN_K = ZERO_C - 40
const MAX_K = ZERO_C + 75
const MIN_PA = 50_000
const MAX_PA = 120_000
/** Humidity ratio of bone-dry air: the library goes no lower. */
const BONE_DRY = 1e-7
/** The library solves a temperature to this; what it solved must be accepted back. */
const SOLVED_K = 1e-3

/** The problem with a humidity that air of this dry bulb cannot have. */
function outOfReach(dryBulb: Kelvin, humidity: Humidity, p: Pascal): Problem | undefined {
  if ('relativeHumidity' in humidity)
    return outOfRange('relative humidity', humidity.relativeHumidity, 0, 1, 'as a fraction')
  const beside = `at a dry bulb of ${dryBulb.toFixed(2)} K`
  return 'wetBulb' in humidity
    ? outOfRange(`wet bulb ${beside}`, humidity.wetBulb, wetBulb(dryBulb, BONE_DRY, p) - SOLVED_K, dryBulb, 'K')
    : outOfRange(`dew point ${beside}`, humidity.dewPoint, dewPoint(dryBulb, BONE_DRY, p) - SOLVED_K, dryBulb, 'K')
}

function humidityRatio(t: number, humidity: Humidity, p: number): number {
  if ('wetBulb' in humidity) return psychrometrics.GetHumRatioFromTWetBulb(t, humidity.wetBulb - ZERO_C, p)
  if ('dewPoint' in humidity) return psychrometrics.GetHumRatioFromTDewPoint(humidity.dewPoint - ZERO_C, p)
  return psychrometrics.GetHumRatioFromRelHum(t, humidity.relativeHumidity, p)
}

function wetBulb(dryBulb: number, W: number, p: number): number {
  return ZERO_C + psychrometrics.GetTWetBulbFromHumRatio(dryBulb - ZERO_C, W, p)
}

function dewPoint(dryBulb: number, W: number, p: number): number {
  return ZERO_C + psychrometrics.GetTDewPointFromHumRatio(dryBulb - ZERO_C, W, p)
}
