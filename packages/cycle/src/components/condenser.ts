import { AIR_HEAT_J_KGK, type Air } from '../air.ts'
import { meanDensity } from '../inventory.ts'
import type { Properties, Saturated } from '../refrigerant/properties.ts'
import { logMean, positivePart, smoothMin } from '../smooth.ts'
import type { TubeFlow, VoidFraction } from '../void-fraction.ts'
import { type Coil, conductances, crossflowEffectiveness } from './coil.ts'

export interface CondenserState {
  readonly outletEnthalpy_J_kg: number
  /** Shares of the tube; the liquid share is negative by as much as the coil is too short to condense everything. */
  readonly vapourShare: number
  readonly twoPhaseShare: number
  readonly liquidShare: number
  readonly heat_W: number
  readonly leavingAir_K: number
  readonly charge_kg: number
}

/** A refrigerant no warmer than the air still gets a driving force, so that an iteration there has a way out. */
const LEAST_APPROACH_K = 0.5
/** Vapour never takes more of the coil than this; a solution is far from it, an iteration may not be. */
const MOST_VAPOUR = 0.95

/**
 * Air-cooled condenser: desuperheating, condensing and subcooling one after the other along the tube, each stretch
 * crossed by fresh air, solved in closed form. Assumed away: pressure drop, conduction along the fins, air that
 * crosses more than one row.
 *
 * @param at saturation at the refrigerant's own partial pressure
 * @param flow refrigerant, kg/s
 * @param airShare airflow over rated airflow
 * @source effectiveness of a stretch with the refrigerant mixed and the air unmixed, Kays and London, REMEMBERED;
 *   zones with shares of one air stream, *common practice* of moving-boundary models
 */
export function condenser(
  coil: Coil,
  properties: Properties,
  at: Saturated,
  inletEnthalpy: number,
  flow: number,
  outdoor: Air,
  airShare: number,
  voidFraction: VoidFraction,
  tube: TubeFlow,
): CondenserState {
  const capacityRate = coil.airflow_kg_s * airShare * AIR_HEAT_J_KGK
  const ua = conductances(coil, airShare, flow)
  const dew = positivePart(at.dew_K - outdoor.dryBulb_K, LEAST_APPROACH_K)
  const bubble = positivePart(at.bubble_K - outdoor.dryBulb_K, LEAST_APPROACH_K)

  const inlet = properties.vapour(at, inletEnthalpy)
  const desuperheat = Math.max(inletEnthalpy - at.vapourEnthalpy_J_kg, 0)
  const vapourHeat = desuperheat / Math.max(inlet.temperature_K - at.dew_K, 1e-6) || at.vapourHeat_J_kgK
  const vapourRate = capacityRate * crossflowEffectiveness(ua.vapour, capacityRate)
  const vapourShare = smoothMin(
    ((flow * vapourHeat) / vapourRate) * Math.log((dew + Math.max(inlet.temperature_K - at.dew_K, 0)) / dew),
    MOST_VAPOUR,
    0.02,
  )

  const condensingRate = capacityRate * crossflowEffectiveness(ua.twoPhase, capacityRate) * logMean(dew, bubble)
  const latent = at.vapourEnthalpy_J_kg - at.liquidEnthalpy_J_kg
  const twoPhaseNeeded = (flow * latent) / condensingRate
  const liquidShare = 1 - vapourShare - twoPhaseNeeded

  const liquidRate = capacityRate * crossflowEffectiveness(ua.liquid, capacityRate)
  const cooled = 1 - Math.exp((-liquidRate * Math.max(liquidShare, 0)) / (flow * at.liquidHeat_J_kgK))
  // By temperature, so that no liquid leaves colder than the air; as a difference, so that nothing jumps at the bubble point.
  const subcooled = properties.liquidEnthalpy(at.bubble_K - bubble * cooled) - properties.liquidEnthalpy(at.bubble_K)
  const outletEnthalpy_J_kg = at.liquidEnthalpy_J_kg + subcooled + (Math.max(-liquidShare, 0) * condensingRate) / flow

  const heat_W = flow * (inletEnthalpy - outletEnthalpy_J_kg)
  const twoPhaseShare = Math.min(twoPhaseNeeded, 1 - vapourShare)
  const outletQuality = Math.min(Math.max(-liquidShare, 0) / twoPhaseNeeded, 1)
  const liquid = properties.liquid(
    0.5 * (at.liquidEnthalpy_J_kg + Math.min(outletEnthalpy_J_kg, at.liquidEnthalpy_J_kg)),
  )
  const meanVapour = 0.5 * (at.vapourDensity_kg_m3 + inlet.density_kg_m3)
  return {
    outletEnthalpy_J_kg,
    vapourShare,
    twoPhaseShare,
    liquidShare,
    heat_W,
    leavingAir_K: outdoor.dryBulb_K + heat_W / capacityRate,
    charge_kg:
      coil.volume_m3 *
      (vapourShare * meanVapour +
        twoPhaseShare * meanDensity(voidFraction, outletQuality, 1, at, tube) +
        Math.max(liquidShare, 0) * liquid.density_kg_m3),
  }
}
