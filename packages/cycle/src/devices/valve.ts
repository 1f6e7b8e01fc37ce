import { unitClamp } from '../smooth.ts'
import type { DeviceInlet } from './inlet.ts'

/** Flow of a valve as an orifice with the area that its opening leaves, kg/s. */
export interface ValveBody {
  /** Flow area times discharge coefficient, wide open, m². */
  readonly area_m2: number
}

/** A shut valve still bleeds: otherwise an iteration that shuts it has no way back. */
const BLEED = 0.01

/**
 * @param opening 0 to 1
 * @source Bernoulli's orifice on the density before the valve: *common practice* for valve capacity; vapour before it
 *   thins the homogeneous mixture and cuts the capacity
 */
export function valveFlow({ area_m2 }: ValveBody, opening: number, inlet: DeviceInlet, downstream_Pa: number): number {
  const drop = Math.max(inlet.at.pressure_Pa - downstream_Pa, 0)
  return area_m2 * (BLEED + (1 - BLEED) * opening) * Math.sqrt(2 * inlet.density_kg_m3 * drop)
}

/** The opening at which a valve would pass a flow; beyond 0 to 1 where none does. */
export function openingFor(valve: ValveBody, flow_kg_s: number, inlet: DeviceInlet, downstream_Pa: number): number {
  const open = Math.max(valveFlow(valve, 1, inlet, downstream_Pa), LEAST_FLOW * flow_kg_s)
  return (flow_kg_s / open - BLEED) / (1 - BLEED)
}

/** Without a pressure difference no opening passes anything: the wanted one ends here. */
const LEAST_FLOW = 0.01

/** Opening of a valve that opens in proportion to a signal within a band, its ends rounded. */
export const proportional = (signal: number, start: number, band: number): number =>
  unitClamp((signal - start) / band, 0.08)
