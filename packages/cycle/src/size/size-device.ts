import { type Device, deviceFlow } from '../devices/device.ts'
import type { DeviceInlet } from '../devices/inlet.ts'
import type { Properties } from '../refrigerant/properties.ts'
import { rootBetween } from '../root.ts'

/** A ½-inch long tube, the common size. */
const TUBE_LENGTH_M = 0.0127
/** About 1.2 m of 1.6 mm bore at a friction factor of 0.025, with 1.5 for the inlet: *common practice*. */
const CAPILLARY_FRICTION = 20
/** A valve is chosen larger than the rating needs. */
const RATED_OPENING = 0.6
const BAND_K = 6
const PRESSURE_BAND = 0.15

/** The device of a kind that passes the rated flow at the rated state. */
export function sizeDevice(
  kind: Device['kind'],
  properties: Properties,
  inlet: DeviceInlet,
  downstream_Pa: number,
  superheat_K: number,
  flow_kg_s: number,
): Device | undefined {
  const passes = (device: Device) =>
    deviceFlow(device, properties, inlet, downstream_Pa, superheat_K, flow_kg_s).flow_kg_s
  switch (kind) {
    case 'fixed-orifice': {
      const tube = (ln: number) => ({ kind, diameter_m: 1e-3 * Math.exp(ln), length_m: TUBE_LENGTH_M }) as const
      const ln = rootBetween((d) => Math.log(passes(tube(d)) / flow_kg_s), Math.log(0.2), Math.log(8), 1e-13)
      return ln === undefined ? undefined : tube(ln)
    }
    case 'capillary': {
      const one: Device = { kind, diameter_m: 1e-3, friction: CAPILLARY_FRICTION }
      return { ...one, diameter_m: 1e-3 * Math.sqrt(flow_kg_s / passes(one)) }
    }
    case 'thermostatic':
      return scaledTo(flow_kg_s, passes, {
        kind,
        area_m2: 1e-6,
        staticSuperheat_K: superheat_K - RATED_OPENING * BAND_K,
        band_K: BAND_K,
      })
    case 'electronic': {
      const drive = { kind: 'opening', opening: RATED_OPENING } as const
      const sized = scaledTo(flow_kg_s, passes, { kind, area_m2: 1e-6, drive })
      return { ...sized, drive: { kind: 'superheat', setPoint_K: superheat_K } }
    }
    case 'automatic':
      return scaledTo(flow_kg_s, passes, {
        kind,
        area_m2: 1e-6,
        setting_Pa: downstream_Pa,
        band_Pa: PRESSURE_BAND * downstream_Pa,
      })
  }
}

function scaledTo<D extends Extract<Device, { area_m2: number }>>(
  flow: number,
  passes: (d: D) => number,
  device: D,
): D {
  return { ...device, area_m2: (device.area_m2 * flow) / passes(device) }
}
