import { moistAir } from '@chargewright/moist-air'
import { kelvin, ok, type Problem, pascal, type Result, STANDARD_ATMOSPHERE } from '@chargewright/quantity'
import { cubicCurves, interpolate, placeIn } from './refrigerant/cubic-curves.ts'

/** Air that enters a coil. Flows and enthalpies are per kg of dry air. */
export interface Air {
  readonly dryBulb_K: number
  readonly wetBulb_K: number
  readonly humidityRatio: number
  readonly enthalpy_J_kg: number
  /** kg of moist air per m³. */
  readonly density_kg_m3: number
  readonly pressure_Pa: number
}

/** Moist air near room temperature, per kg of dry air. */
export const AIR_HEAT_J_KGK = 1020

/**
 * @param dryBulb K, −40 °C to 75 °C
 * @param wetBulb K, up to the dry bulb
 * @param pressure Pa absolute, 50 kPa to 120 kPa
 */
export function air(dryBulb: number, wetBulb: number, pressure: number = STANDARD_ATMOSPHERE.si): Result<Air, Problem> {
  const state = moistAir(kelvin(dryBulb), { wetBulb: kelvin(wetBulb) }, pascal(pressure))
  if (!state.ok) return state
  const { dryBulb_K, wetBulb_K, humidityRatio, enthalpy_J_kg, density_kg_m3, pressure_Pa } = state.value
  return ok({ dryBulb_K, wetBulb_K, humidityRatio, enthalpy_J_kg, density_kg_m3, pressure_Pa })
}

/** Enthalpy of saturated air over temperature, at one pressure. */
export type SaturatedAir = (temperature: number) => number

/** −40 °C to 60 °C, where the moist-air package gives it; beyond, straight on. */
const COLDEST_K = 233.15
const WARMEST_K = 333.15
const NODES = 51

let latest: { readonly pressure: number; readonly enthalpy: SaturatedAir } | undefined

/** One site has one pressure, so only the last table is kept. */
export function saturatedAir(pressure: number): SaturatedAir {
  if (latest?.pressure !== pressure) latest = { pressure, enthalpy: tabulate(pressure) }
  return latest.enthalpy
}

function tabulate(pressure: number): SaturatedAir {
  const enthalpies = Float64Array.from({ length: NODES }, (_, i) => {
    const temperature = COLDEST_K + ((WARMEST_K - COLDEST_K) * i) / (NODES - 1)
    const state = moistAir(kelvin(temperature), { relativeHumidity: 1 }, pascal(pressure))
    return state.ok ? state.value.enthalpy_J_kg : Number.NaN
  })
  const table = cubicCurves(COLDEST_K, WARMEST_K, [enthalpies])
  return (temperature) => interpolate(table, 0, placeIn(table, temperature))
}
