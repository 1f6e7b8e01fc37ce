import type { Properties } from '../refrigerant/properties.ts'
import { type CapillaryTube, capillaryFlow } from './capillary-tube.ts'
import type { DeviceInlet } from './inlet.ts'
import { type ShortTube, shortTubeFlow } from './short-tube.ts'
import { proportional, type ValveBody, valveFlow } from './valve.ts'

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

/** Steady state of a controller that integrates: within this band it reaches any opening. */
const CONTROLLER_BAND_K = 0.4

/**
 * Mass flow that a device passes.
 *
 * @param superheat at the coil outlet, K, where the bulb or sensor sits
 */
export function deviceFlow(
  device: Device,
  properties: Properties,
  inlet: DeviceInlet,
  downstream_Pa: number,
  superheat: number,
): DeviceFlow {
  switch (device.kind) {
    case 'fixed-orifice':
      return { flow_kg_s: shortTubeFlow(device, inlet, properties.critical, downstream_Pa), opening: 1 }
    case 'capillary':
      return { flow_kg_s: capillaryFlow(device, inlet, flashing(properties, inlet), downstream_Pa), opening: 1 }
    case 'thermostatic':
    case 'electronic':
    case 'automatic': {
      const opening = openingOf(device, superheat, downstream_Pa)
      return { flow_kg_s: valveFlow(device, opening, inlet, downstream_Pa), opening }
    }
  }
}

function openingOf(
  device: ThermostaticValve | ElectronicValve | ConstantPressureValve,
  superheat: number,
  downstream_Pa: number,
): number {
  switch (device.kind) {
    case 'thermostatic':
      return proportional(superheat, device.staticSuperheat_K, device.band_K)
    case 'electronic':
      return device.drive.kind === 'opening'
        ? device.drive.opening
        : proportional(superheat, device.drive.setPoint_K - CONTROLLER_BAND_K / 2, CONTROLLER_BAND_K)
    case 'automatic':
      return proportional(-downstream_Pa, -device.setting_Pa - device.band_Pa / 2, device.band_Pa)
  }
}

/** ω of the flashing mixture: how fast its volume grows as it is throttled from its bubble pressure to half of it. */
function flashing(properties: Properties, { bubblePressure_Pa, enthalpy_J_kg, density_kg_m3 }: DeviceInlet): number {
  const half = properties.saturated(bubblePressure_Pa / 2)
  const latent = half.vapourEnthalpy_J_kg - half.liquidEnthalpy_J_kg
  const quality = Math.min(Math.max((enthalpy_J_kg - half.liquidEnthalpy_J_kg) / latent, 0.01), 0.99)
  const volume = quality / half.vapourDensity_kg_m3 + (1 - quality) / half.liquidDensity_kg_m3
  return Math.max(volume * density_kg_m3 - 1, 1.05)
}
