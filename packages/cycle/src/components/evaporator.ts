import { AIR_HEAT_J_KGK, type Air, type SaturatedAir } from '../air.ts'
import { meanDensity } from '../inventory.ts'
import type { Saturated } from '../refrigerant/properties.ts'
import { smoothMax, smoothMin } from '../smooth.ts'
import type { TubeFlow, VoidFraction } from '../void-fraction.ts'
import { type Coil, type Conductances, conductances, crossflowEffectiveness } from './coil.ts'

export interface Evaporator extends Coil {
  /**
   * Standard deviation of the refrigerant's flow from circuit to circuit, over its mean. Some circuits still boil at
   * their end while others superheat, which softens the change from superheated to flooded.
   */
  readonly circuitSpread: number
}

export interface EvaporatorState {
  readonly outletEnthalpy_J_kg: number
  /** Share of the tube that boils, 1 when flooded. */
  readonly twoPhaseShare: number
  readonly heat_W: number
  readonly leavingAir_K: number
  /** Mean temperature of the wetted tube wall. */
  readonly wall_K: number
  readonly charge_kg: number
}

/** Three circuits with the mean and standard deviation of a normal spread. */
const CIRCUITS = [-Math.sqrt(1.5), 0, Math.sqrt(1.5)]

/**
 * Air-heated evaporator: boiling, then superheating, each stretch crossed by fresh air, in closed form, averaged over
 * circuits that are fed unevenly. A coil below the dew point of the air takes heat by enthalpy difference, a dry one
 * by temperature difference: the larger of the two, with the corner rounded. Superheated stretches are dry. Assumed
 * away: pressure drop, frost, uneven air.
 *
 * @param at saturation at the coil's pressure
 * @param leavingDensity of the gas in the suction line's beginning, kg/m³, for the inventory
 * @param flow refrigerant, kg/s
 * @param airShare airflow over rated airflow
 * @source wet coil by enthalpy difference with a fictitious saturated-air specific heat: Threlkeld 1970; Braun, Klein
 *   and Mitchell 1989, REMEMBERED
 */
export function evaporator(
  coil: Evaporator,
  at: Saturated,
  inletEnthalpy: number,
  leavingDensity: number,
  flow: number,
  indoor: Air,
  saturated: SaturatedAir,
  airShare: number,
  voidFraction: VoidFraction,
  tube: TubeFlow,
): EvaporatorState {
  const airflow = coil.airflow_kg_s * airShare
  const capacityRate = airflow * AIR_HEAT_J_KGK
  const ua = conductances(coil, airShare, flow)
  const latent = at.vapourEnthalpy_J_kg - at.liquidEnthalpy_J_kg
  const inletQuality = Math.min(Math.max((inletEnthalpy - at.liquidEnthalpy_J_kg) / latent, 0), 1)
  const boiling_K = 0.5 * (at.bubble_K + inletQuality * (at.dew_K - at.bubble_K) + at.dew_K)
  const boilingHeat = boilingHeatOf(airflow, ua, boiling_K, indoor, saturated)

  const vapourRate = capacityRate * crossflowEffectiveness(ua.vapour, capacityRate)
  const warming = at.vapourHeat_J_kgK * (indoor.dryBulb_K - at.dew_K)
  let outletEnthalpy_J_kg = 0
  let twoPhaseShare = 0
  for (const z of CIRCUITS) {
    const fed = flow * (1 + coil.circuitSpread * z)
    const needed = (fed * (at.vapourEnthalpy_J_kg - inletEnthalpy)) / boilingHeat
    const dry = 1 - needed
    const outlet =
      dry > 0
        ? at.vapourEnthalpy_J_kg + warming * (1 - Math.exp((-vapourRate * dry) / (fed * at.vapourHeat_J_kgK)))
        : at.vapourEnthalpy_J_kg + (dry * boilingHeat) / fed
    outletEnthalpy_J_kg += (outlet * fed) / (3 * flow)
    twoPhaseShare += smoothMin(needed, 1, 0.02) / 3
  }

  const heat_W = flow * (outletEnthalpy_J_kg - inletEnthalpy)
  const outletQuality = Math.min(Math.max((outletEnthalpy_J_kg - at.liquidEnthalpy_J_kg) / latent, inletQuality), 1)
  const meanVapour = 0.5 * (at.vapourDensity_kg_m3 + Math.min(leavingDensity, at.vapourDensity_kg_m3))
  const boilingDensity = meanDensity(voidFraction, inletQuality, outletQuality, at, tube)
  const { wall_K, leavingAir_K } = airLeaving(airflow, ua, indoor, saturated, heat_W, boiling_K, twoPhaseShare)
  return {
    outletEnthalpy_J_kg,
    twoPhaseShare,
    heat_W,
    wall_K,
    leavingAir_K,
    charge_kg: coil.volume_m3 * (twoPhaseShare * boilingDensity + (1 - twoPhaseShare) * meanVapour),
  }
}

/** Heat the whole coil would take if all of it boiled, W: by enthalpy when wet, by temperature when dry. */
function boilingHeatOf(airflow: number, ua: Conductances, boiling_K: number, indoor: Air, saturated: SaturatedAir) {
  const capacityRate = airflow * AIR_HEAT_J_KGK
  const dry = capacityRate * crossflowEffectiveness(ua.twoPhase, capacityRate) * (indoor.dryBulb_K - boiling_K)
  const { conductance } = wet(ua, boiling_K, saturated)
  const driving = indoor.enthalpy_J_kg - saturated(boiling_K)
  const wetHeat = airflow * (1 - Math.exp(-conductance / airflow)) * driving
  const least = 0.01 * capacityRate
  return smoothMax(smoothMax(dry, wetHeat, capacityRate * 0.3), least, least)
}

/** Overall conductance of the wet coil on the enthalpy of air, kg/s, with the air side in series with the wall's. */
function wet(ua: Conductances, boiling_K: number, saturated: SaturatedAir) {
  // The slope of the saturated-air enthalpy a few kelvin above the refrigerant, where the wall is.
  const slope = (saturated(boiling_K + 6) - saturated(boiling_K)) / 6
  const inside = 1 / (1 / ua.twoPhase - 1 / ua.air)
  const outside = ua.air / AIR_HEAT_J_KGK
  return { conductance: 1 / (1 / outside + slope / inside), outside, slope, inside }
}

/** Dry bulb of the leaving air: it approaches the wall as air that only touched it would, the rest of the heat is latent. */
function airLeaving(
  airflow: number,
  ua: Conductances,
  indoor: Air,
  saturated: SaturatedAir,
  heat: number,
  boiling_K: number,
  twoPhaseShare: number,
) {
  const { inside } = wet(ua, boiling_K, saturated)
  const wall_K = Math.min(boiling_K + heat / (Math.max(twoPhaseShare, 0.05) * inside), indoor.dryBulb_K)
  const bypass = Math.exp(-ua.air / (airflow * AIR_HEAT_J_KGK))
  const sensible = twoPhaseShare * airflow * AIR_HEAT_J_KGK * (1 - bypass) * (indoor.dryBulb_K - wall_K)
  return { wall_K, leavingAir_K: indoor.dryBulb_K - Math.min(sensible, heat) / (airflow * AIR_HEAT_J_KGK) }
}
