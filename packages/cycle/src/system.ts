import { ok, type Problem, type Result, STANDARD_ATMOSPHERE } from '@chargewright/quantity'
import { type Air, air, type SaturatedAir, saturatedAir } from './air.ts'
import type { Accumulator } from './components/accumulator.ts'
import type { Coil } from './components/coil.ts'
import type { Compressor } from './components/compressor.ts'
import type { Evaporator } from './components/evaporator.ts'
import type { LiquidLine } from './components/liquid-line.ts'
import type { Receiver } from './components/receiver.ts'
import type { SuctionLine } from './components/suction-line.ts'
import type { Device } from './devices/device.ts'
import type { Properties } from './refrigerant/properties.ts'
import type { TubeFlow, VoidFraction } from './void-fraction.ts'

/** Everything of a system that does not change with weather, charge or fault. */
export interface System {
  readonly properties: Properties
  readonly compressor: Compressor
  readonly condenser: Coil
  readonly liquidLine: LiquidLine
  readonly receiver?: Receiver
  readonly device: Device
  readonly evaporator: Evaporator
  readonly suctionLine: SuctionLine
  readonly accumulator?: Accumulator
  readonly inventory: Inventory
  readonly rated: Rated
  readonly trips: Trips
}

export interface Inventory {
  readonly voidFraction: VoidFraction
  readonly tube: TubeFlow
  /** Gas at discharge pressure outside the condenser, and at suction pressure in the compressor's shell, m³. */
  readonly dischargeVolume_m3: number
  readonly shellVolume_m3: number
  /** What the inventory misses, independent of the state: refrigerant in the oil, in fittings. */
  readonly offset_kg: number
}

/** The point from which a search may always start. */
export interface Rated {
  readonly conditions: Conditions
  readonly charge_kg: number
  readonly unknowns: Unknowns
  readonly flow_kg_s: number
  readonly capacity_W: number
  readonly superheat_K: number
  readonly subcooling_K: number
}

export interface Trips {
  readonly high_Pa: number
  readonly low_Pa: number
  /** Coils of this system are meant to work below freezing, and are defrosted. */
  readonly frostIsNormal: boolean
}

/** What Newton's method turns: both pressures by their logarithm, and the enthalpy at the compressor. */
export interface Unknowns {
  readonly lnSuction: number
  readonly lnCondensing: number
  readonly suctionEnthalpy_J_kg: number
}

export interface Conditions {
  readonly outdoor: Air
  readonly indoor: Air
  readonly saturatedAir: SaturatedAir
}

/**
 * @param outdoorDryBulb K
 * @param indoorDryBulb K; for a cold room its air
 * @param indoorWetBulb K
 * @param pressure of the site, Pa absolute
 */
export function conditions(
  outdoorDryBulb: number,
  indoorDryBulb: number,
  indoorWetBulb: number,
  pressure: number = STANDARD_ATMOSPHERE.si,
): Result<Conditions, Problem> {
  // Only its dry bulb matters to a dry condenser.
  const outdoor = air(outdoorDryBulb, outdoorDryBulb - DRY_K, pressure)
  if (!outdoor.ok) return outdoor
  const indoor = air(indoorDryBulb, indoorWetBulb, pressure)
  if (!indoor.ok) return indoor
  return ok({ outdoor: outdoor.value, indoor: indoor.value, saturatedAir: saturatedAir(pressure) })
}

const DRY_K = 2

/** The state of health of a system and its charge; `SOUND` with a charge is a sound system. */
export interface Health {
  readonly charge_kg: number
  /** Additional drop in the liquid line, Pa at the rated flow. */
  readonly restriction_Pa: number
  /** Partial pressure that air in the condenser would have in its empty volume at 300 K, Pa. */
  readonly nonCondensable_Pa: number
  /** Share of the swept gas that leaks back through worn valves, at a pressure ratio of 3. */
  readonly wear: number
  /** Airflows over rated airflow. */
  readonly indoorAirShare: number
  readonly outdoorAirShare: number
  /** Device flow over that of a sound device at the same state. */
  readonly deviceShare: number
}

export const SOUND: Omit<Health, 'charge_kg'> = {
  restriction_Pa: 0,
  nonCondensable_Pa: 0,
  wear: 0,
  indoorAirShare: 1,
  outdoorAirShare: 1,
  deviceShare: 1,
}
