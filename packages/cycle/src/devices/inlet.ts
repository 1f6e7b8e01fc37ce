import type { Properties, Saturated } from '../refrigerant/properties.ts'

/** What stands before an expansion device and what behind it. */
export interface DeviceInlet {
  /** Saturation at the pressure before the device. */
  readonly at: Saturated
  readonly enthalpy_J_kg: number
  /** Vapour share, 0 for a subcooled liquid. */
  readonly quality: number
  /** 0 when vapour is present. */
  readonly subcooling_K: number
  /** Of the liquid or of the homogeneous mixture. */
  readonly density_kg_m3: number
  /** Where the liquid would boil if it were throttled; the pressure before the device when it already does. */
  readonly bubblePressure_Pa: number
}

/** Beyond this share of vapour no liquid seal is left anywhere upstream; the state is held here. */
const MOST_VAPOUR = 0.98

export function deviceInlet(properties: Properties, at: Saturated, enthalpy_J_kg: number): DeviceInlet {
  const { liquidEnthalpy_J_kg, vapourEnthalpy_J_kg, liquidDensity_kg_m3, vapourDensity_kg_m3 } = at
  if (enthalpy_J_kg < liquidEnthalpy_J_kg) {
    const liquid = properties.liquid(enthalpy_J_kg)
    return {
      at,
      enthalpy_J_kg,
      quality: 0,
      subcooling_K: at.bubble_K - liquid.temperature_K,
      density_kg_m3: liquid.density_kg_m3,
      bubblePressure_Pa: liquid.bubblePressure_Pa,
    }
  }
  const share = (enthalpy_J_kg - liquidEnthalpy_J_kg) / (vapourEnthalpy_J_kg - liquidEnthalpy_J_kg)
  const quality = Math.min(share, MOST_VAPOUR)
  return {
    at,
    enthalpy_J_kg,
    quality,
    subcooling_K: 0,
    density_kg_m3: 1 / (quality / vapourDensity_kg_m3 + (1 - quality) / liquidDensity_kg_m3),
    bubblePressure_Pa: at.pressure_Pa,
  }
}

/**
 * Share of the choked flow that passes: 1 while the pressure behind the device is well below that before it, falling to
 * 0 as the two meet, so that a stopped system has no flow.
 */
export function choking(upstream: number, downstream: number): number {
  const drop = Math.max(1 - downstream / upstream, 0) / 0.25
  const square = drop * drop
  return Math.sqrt(drop / Math.sqrt(Math.sqrt(1 + square * square)))
}
