import type { Properties } from '../refrigerant/properties.ts'
import { unitClamp } from '../smooth.ts'
import { type CapillaryTube, capillaryFlow } from './capillary-tube.ts'
import type { DeviceInlet } from './inlet.ts'
import { type ShortTube, shortTubeFlow } from './short-tube.ts'
import { openingFor, proportional, type ValveBody, valveFlow } from './valve.ts'

export type Device = ShortTube | CapillaryTube | ThermostaticValve | ElectronicValve | ConstantPressureValve

/** Opens with the superheat at its bulb, past the static superheat that its spring sets. External equaliser. */
export interface ThermostaticValve extends ValveBody {
  readonly kind: 'thermostatic'
  readonly staticSuperheat_K: number
  /** Superheat from just open to wide open. */
  readonly band_K: number
}

/** Driven by a controller that holds a superheat, or left at an opening. */
export interface ElectronicValve extends ValveBody {
  readonly kind: 'electronic'
  readonly drive:
    | { readonly kind: 'superheat'; readonly setPoint_K: number }
    | { readonly kind: 'opening'; readonly opening: number }
}

/** Holds the pressure behind it: opens as that falls below its setting. */
export interface ConstantPressureValve extends ValveBody {
  readonly kind: 'automatic'
  readonly setting_Pa: number
  /** From shut to wide open. */
  readonly band_Pa: number
}

export interface DeviceFlow {
  readonly flow_kg_s: number
  /** Of a valve, 0 to 1; 1 for a fixed device. */
  readonly opening: number
}

/** A superheat off by this much weighs as much as the whole stroke. Any would do. */
const YIELD_K = 5
/** Over this share the corners at shut and wide open are rounded. */
const CORNER = 0.02

/**
 * Mass flow that a device passes.
 *
 * A controller that integrates ends only where its superheat is the one set, or its valve wide open or shut. Both are
 * one equation, opening = clamp(opening that passes the flow + superheat too much / any figure), whose slopes are never
 * those of a step; the receiver's level stands in another like it.
 *
 * @param superheat at the coil outlet, K, where the bulb or sensor sits
 * @param drawn_kg_s what the compressor draws; only a controller makes use of it
 */
export function deviceFlow(
  device: Device,
  properties: Properties,
  inlet: DeviceInlet,
  downstream_Pa: number,
  superheat: number,
  drawn_kg_s: number,
): DeviceFlow {
  switch (device.kind) {
    case 'fixed-orifice':
      return { flow_kg_s: shortTubeFlow(device, inlet, properties.critical, downstream_Pa), opening: 1 }
    case 'capillary':
      return { flow_kg_s: capillaryFlow(device, inlet, flashing(properties, inlet), downstream_Pa), opening: 1 }
    case 'thermostatic':
      return passing(device, proportional(superheat, device.staticSuperheat_K, device.band_K), inlet, downstream_Pa)
    case 'automatic': {
      const opening = proportional(-downstream_Pa, -device.setting_Pa - device.band_Pa / 2, device.band_Pa)
      return passing(device, opening, inlet, downstream_Pa)
    }
    case 'electronic': {
      if (device.drive.kind === 'opening') return passing(device, device.drive.opening, inlet, downstream_Pa)
      const wanted = openingFor(device, drawn_kg_s, inlet, downstream_Pa)
      const opening = unitClamp(wanted + (superheat - device.drive.setPoint_K) / YIELD_K, CORNER)
      return passing(device, opening, inlet, downstream_Pa)
    }
  }
}

const passing = (valve: ValveBody, opening: number, inlet: DeviceInlet, downstream_Pa: number): DeviceFlow => ({
  flow_kg_s: valveFlow(valve, opening, inlet, downstream_Pa),
  opening,
})

/** ω of the flashing mixture: how fast its volume grows as it is throttled from its bubble pressure to half of it. */
function flashing(properties: Properties, { bubblePressure_Pa, enthalpy_J_kg, density_kg_m3 }: DeviceInlet): number {
  const half = properties.saturated(bubblePressure_Pa / 2)
  const latent = half.vapourEnthalpy_J_kg - half.liquidEnthalpy_J_kg
  const quality = Math.min(Math.max((enthalpy_J_kg - half.liquidEnthalpy_J_kg) / latent, 0.01), 0.99)
  const volume = quality / half.vapourDensity_kg_m3 + (1 - quality) / half.liquidDensity_kg_m3
  return Math.max(volume * density_kg_m3 - 1, 1.05)
}
