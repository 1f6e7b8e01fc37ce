import type { Saturated } from '../refrigerant/properties.ts'
import type { VapourState } from '../refrigerant/vapour-table.ts'

export interface SuctionLine {
  readonly volume_m3: number
  /** Pa at the rated flow and density. */
  readonly drop_Pa: number
  readonly ratedFlow_kg_s: number
  readonly ratedDensity_kg_m3: number
  /** Conductance from the surroundings, W/K. */
  readonly gain_W_K: number
}

export interface SuctionLineState {
  readonly evaporatorPressure_Pa: number
  readonly evaporatorOutletEnthalpy_J_kg: number
  readonly charge_kg: number
}

/**
 * Upstream from the compressor: the pressure that drives the gas down the line, and the enthalpy with which it left the
 * coil, given what the line takes up from air at a given temperature.
 */
export function suctionLine(
  line: SuctionLine,
  at: Saturated,
  gas: VapourState,
  suctionEnthalpy: number,
  flow: number,
  surroundings_K: number,
): SuctionLineState {
  const drop = line.drop_Pa * (flow / line.ratedFlow_kg_s) ** 2 * (line.ratedDensity_kg_m3 / gas.density_kg_m3)
  const gain = (line.gain_W_K * (surroundings_K - gas.temperature_K)) / Math.max(flow, 0.05 * line.ratedFlow_kg_s)
  return {
    evaporatorPressure_Pa: at.pressure_Pa + Math.min(drop, at.pressure_Pa),
    evaporatorOutletEnthalpy_J_kg: suctionEnthalpy - gain,
    charge_kg: line.volume_m3 * gas.density_kg_m3,
  }
}
