import { fail, ok, type Problem, type Result } from '@chargewright/quantity'
import { AIR_HEAT_J_KGK } from '../air.ts'
import type { Coil } from '../components/coil.ts'
import { condenser } from '../components/condenser.ts'
import { type Evaporator, evaporator } from '../components/evaporator.ts'
import type { Saturated } from '../refrigerant/properties.ts'
import { rootBetween } from '../root.ts'
import type { Conditions } from '../system.ts'
import type { TubeFlow } from '../void-fraction.ts'
import type { CoilShape, Habits } from './habits.ts'
import type { Nameplate } from './nameplate.ts'
import type { RatingPoint } from './rating-point.ts'

/** Share of the air's heating that a coil of common depth reaches: sets the condenser's airflow together with habit. */
const USUAL_EFFECTIVENESS = 0.72

/** Charge plays no part while the conductances are sought. */
const NO_TUBE: TubeFlow = { massFlux: 180, diameter_m: 0.008 }

/** A condenser that leaves the liquid as it is rated. */
export function sizeCondenser(
  { properties, capacity_W }: Nameplate,
  habits: Habits,
  { condensing, outdoorFan_W }: RatingPoint,
  { outdoor }: Conditions,
  dischargeEnthalpy: number,
  liquidEnthalpy: number,
  flow: number,
): Result<Coil, Problem> {
  const heat = flow * (dischargeEnthalpy - liquidEnthalpy)
  const approach = condensing.dew_K - outdoor.dryBulb_K
  const habitual = habits.outdoorAir_m3_s_W * capacity_W * outdoor.density_kg_m3
  const airflow_kg_s = Math.sqrt((habitual * heat) / (AIR_HEAT_J_KGK * USUAL_EFFECTIVENESS * approach))
  const bare = bareCoil(airflow_kg_s, habits.condenserVolume_m3_W * capacity_W, flow, outdoorFan_W)
  const coil = sizeCoil(bare, habits.condenserShape, (c) => {
    const state = condenser(c, properties, condensing, dischargeEnthalpy, flow, outdoor, 1, 'zivi', NO_TUBE)
    return (liquidEnthalpy - state.outletEnthalpy_J_kg) / 1e5
  })
  if (coil) return ok(coil)
  const colder = condensing.bubble_K - outdoor.dryBulb_K
  return fail({
    kind: 'unsolved',
    field: 'rated subcooling',
    value: `${((condensing.liquidEnthalpy_J_kg - liquidEnthalpy) / condensing.liquidHeat_J_kgK).toFixed(1)} K`,
    accepted: `at this efficiency the liquid condenses only ${colder.toFixed(1)} K above the outdoor air`,
  })
}

/** An evaporator that leaves the vapour as it is rated. */
export function sizeEvaporator(
  { properties, capacity_W }: Nameplate,
  habits: Habits,
  { evaporating, indoorFan_W }: RatingPoint,
  { indoor, saturatedAir }: Conditions,
  inletEnthalpy: number,
  outletEnthalpy: number,
  flow: number,
): Result<Evaporator, Problem> {
  const airflow_kg_s = (habits.indoorAir_m3_s_W * capacity_W * indoor.density_kg_m3) / (1 + indoor.humidityRatio)
  const bare = {
    ...bareCoil(airflow_kg_s, habits.evaporatorVolume_m3_W * capacity_W, flow, indoorFan_W),
    circuitSpread: habits.circuitSpread,
  }
  const { evaporatorShape } = habits
  const vapour = evaporatorShape.vapour * gasTransfer(properties, evaporating)
  const coil = sizeCoil(bare, { ...evaporatorShape, vapour }, (c) => {
    const state = evaporator(
      c,
      evaporating,
      inletEnthalpy,
      evaporating.vapourDensity_kg_m3,
      flow,
      indoor,
      saturatedAir,
      1,
      'zivi',
      NO_TUBE,
    )
    return (state.outletEnthalpy_J_kg - outletEnthalpy) / 1e5
  })
  if (coil) return ok(coil)
  const superheat = properties.vapour(evaporating, outletEnthalpy).temperature_K - evaporating.dew_K
  return fail({
    kind: 'unsolved',
    field: 'rated superheat',
    value: `${superheat.toFixed(1)} K`,
    accepted: `the air entering is only ${(indoor.dryBulb_K - evaporating.dew_K).toFixed(1)} K above the evaporating temperature`,
  })
}

/**
 * How well a gas takes up heat in an evaporator built for it, over R-22 at the usual evaporating temperature: as cp and
 * the 0.8th power of the mass flux (Dittus and Boelter, with the same Prandtl number), the circuits being so many that
 * friction costs all refrigerants the same saturation temperature, G² ∝ ρ dp/dT. That is why the superheat of R-410A
 * answers to weather as that of R-22 does, though its gas carries half as much heat again.
 */
function gasTransfer(properties: Nameplate['properties'], at: Saturated): number {
  const slope = properties.dewPressure(at.dew_K + 0.5) - properties.dewPressure(at.dew_K - 0.5)
  return (at.vapourHeat_J_kgK / R22_HEAT_J_KGK) * ((at.vapourDensity_kg_m3 * slope) / R22_DENSITY_SLOPE) ** 0.4
}

/** R-22 saturated at 7 °C: cp, and density times the slope of its pressure, kg/m³ · Pa/K; COMPUTED from its equation. */
const R22_HEAT_J_KGK = 759
const R22_DENSITY_SLOPE = 26.54 * 19_250

function bareCoil(airflow_kg_s: number, volume_m3: number, ratedFlow_kg_s: number, fan_W: number): Coil {
  return {
    airUa_W_K: 0,
    twoPhaseUa_W_K: 0,
    vapourUa_W_K: 0,
    liquidUa_W_K: 0,
    volume_m3,
    airflow_kg_s,
    ratedFlow_kg_s,
    fan_W,
  }
}

/**
 * The air-side conductance, between 0.1 and 30 times the capacity rate of the air, with which a coil leaves the
 * refrigerant as wanted.
 *
 * @param beyond how far past the wanted state a coil goes; rises with its conductance
 */
function sizeCoil<C extends Coil>(bare: C, shape: CoilShape, beyond: (coil: C) => number): C | undefined {
  const rate = bare.airflow_kg_s * AIR_HEAT_J_KGK
  const shaped = (ln: number): C => {
    const airUa_W_K = rate * Math.exp(ln)
    return {
      ...bare,
      airUa_W_K,
      twoPhaseUa_W_K: shape.twoPhase * airUa_W_K,
      vapourUa_W_K: shape.vapour * airUa_W_K,
      liquidUa_W_K: shape.liquid * airUa_W_K,
    }
  }
  const ln = rootBetween((u) => beyond(shaped(u)), Math.log(0.1), Math.log(30), 1e-13)
  return ln === undefined ? undefined : shaped(ln)
}
