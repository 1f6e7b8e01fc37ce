import { type DeviceInlet, deviceInlet } from '../devices/inlet.ts'
import type { Properties, Saturated } from '../refrigerant/properties.ts'

/** Liquid line with its filter-drier. */
export interface LiquidLine {
  readonly volume_m3: number
  readonly drierVolume_m3: number
  /** Pressure drop with liquid, Pa at the rated flow. */
  readonly drop_Pa: number
  readonly ratedFlow_kg_s: number
  /** Conductance to the outdoor air, of the line and of a receiver before it, W/K. */
  readonly loss_W_K: number
}

export interface LiquidLineState {
  readonly outletEnthalpy_J_kg: number
  readonly inlet: DeviceInlet
  readonly drop_Pa: number
  readonly charge_kg: number
}

/** No restriction leaves less than this share of the pressure, so that there is always a state behind it. */
const LEAST_SHARE = 0.15
/** A nearly stopped flow does not cool without bound. */
const LEAST_FLOW = 0.1

/**
 * Friction by the square of the flow over the density, so that vapour in the line costs pressure and makes more of it;
 * heat lost to the outdoor air works against that, the more the slower the flow. Assumed away: height.
 *
 * @param restriction additional drop, Pa at the rated flow with liquid
 */
export function liquidLine(
  line: LiquidLine,
  properties: Properties,
  at: Saturated,
  enthalpy: number,
  flow: number,
  restriction: number,
  outdoor_K: number,
): LiquidLineState {
  const entering = deviceInlet(properties, at, enthalpy)
  const share = (flow / line.ratedFlow_kg_s) ** 2 * (at.liquidDensity_kg_m3 / entering.density_kg_m3)
  const wanted = (line.drop_Pa + restriction) * share
  // Rounded so that a choked line approaches its least outlet pressure and never passes it.
  const most = (1 - LEAST_SHARE) * at.pressure_Pa
  const square = (wanted / most) ** 2
  const drop_Pa = wanted / Math.sqrt(Math.sqrt(1 + square * square))
  const warmth = at.bubble_K - entering.subcooling_K - outdoor_K
  const outletEnthalpy_J_kg = enthalpy - (line.loss_W_K * warmth) / Math.max(flow, LEAST_FLOW * line.ratedFlow_kg_s)
  const inlet = deviceInlet(properties, properties.saturated(at.pressure_Pa - drop_Pa), outletEnthalpy_J_kg)
  return {
    outletEnthalpy_J_kg,
    inlet,
    drop_Pa,
    charge_kg:
      line.volume_m3 * 0.5 * (entering.density_kg_m3 + inlet.density_kg_m3) +
      line.drierVolume_m3 * entering.density_kg_m3,
  }
}
