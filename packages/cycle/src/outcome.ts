import type { Cycle } from './cycle.ts'
import type { Readings } from './readings.ts'
import type { System } from './system.ts'

/** What a steady state means for the machine, beyond its numbers. Several can hold at once. */
export type Outcome =
  /** Liquid reaches the compressor; `quality` is the vapour share there. */
  | { readonly kind: 'flooded'; readonly quality: number }
  /** Vapour arrives at the expansion device; share of the mass. */
  | { readonly kind: 'flashing-at-device'; readonly quality: number }
  | { readonly kind: 'receiver-empty' }
  | { readonly kind: 'receiver-full' }
  /** The system would have stopped: the state is what it would run at with its switch bridged. */
  | { readonly kind: 'high-pressure-trip'; readonly pressure_Pa: number; readonly limit_Pa: number }
  | { readonly kind: 'low-pressure-trip'; readonly pressure_Pa: number; readonly limit_Pa: number }
  /** The coil's wall is below freezing where it is not meant to be: the state drifts as ice grows. */
  | { readonly kind: 'frost'; readonly wall_K: number }
  /** A valve is wide open and no longer holds its superheat. */
  | { readonly kind: 'valve-wide-open' }

export type OutcomeKind = Outcome['kind']

const FREEZING_K = 273.15
const FULL = 0.97
const EMPTY = 0.03
const WIDE_OPEN = 0.97

export function outcomesOf(
  { trips, device, properties }: System,
  cycle: Cycle,
  readings: Readings,
): readonly Outcome[] {
  const { suction, suctionEnthalpy_J_kg, liquidLine, receiverLevel, opening, evaporator } = cycle
  const outcomes: Outcome[] = []
  if (suctionEnthalpy_J_kg < suction.vapourEnthalpy_J_kg) {
    const latent = suction.vapourEnthalpy_J_kg - suction.liquidEnthalpy_J_kg
    const quality = Math.max((suctionEnthalpy_J_kg - suction.liquidEnthalpy_J_kg) / latent, 0)
    outcomes.push({ kind: 'flooded', quality })
  }
  if (liquidLine.inlet.quality > 0) outcomes.push({ kind: 'flashing-at-device', quality: liquidLine.inlet.quality })
  if (receiverLevel !== undefined && receiverLevel < EMPTY) outcomes.push({ kind: 'receiver-empty' })
  if (receiverLevel !== undefined && receiverLevel > FULL) outcomes.push({ kind: 'receiver-full' })
  const [high, low] = [readings.dischargePressure_Pa, readings.suctionPressure_Pa]
  const highest = Math.min(trips.high_Pa, properties.range.max_Pa)
  if (high > highest) outcomes.push({ kind: 'high-pressure-trip', pressure_Pa: high, limit_Pa: highest })
  if (low < trips.low_Pa) outcomes.push({ kind: 'low-pressure-trip', pressure_Pa: low, limit_Pa: trips.low_Pa })
  if (evaporator.wall_K < FREEZING_K && !trips.frostIsNormal)
    outcomes.push({ kind: 'frost', wall_K: evaporator.wall_K })
  const isValve = device.kind !== 'fixed-orifice' && device.kind !== 'capillary'
  if (isValve && opening > WIDE_OPEN) outcomes.push({ kind: 'valve-wide-open' })
  return outcomes
}
