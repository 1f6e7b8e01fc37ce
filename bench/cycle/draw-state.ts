import {
  type Conditions,
  conditions,
  type Device,
  type Health,
  type Properties,
  propertiesOf,
  SOUND,
  type System,
  size,
} from '../../packages/cycle/src/index.ts'
import { findRefrigerant } from '../../packages/refrigerant/src/index.ts'
import type { Random } from '../population/random.ts'

export const DEVICES = ['fixed-orifice', 'capillary', 'thermostatic', 'electronic', 'automatic'] as const

const REFRIGERANTS = ['R-410A', 'R-22', 'R-134a', 'R-32', 'R-290', 'R-454B', 'R-407C']

export function tables(name: string): Properties {
  const found = findRefrigerant(name)
  const made = found.ok ? propertiesOf(found.value) : found
  if (!made.ok) throw new Error(`no tables for ${name}`)
  return made.value
}

export interface DrawnState {
  readonly system: System
  readonly at: Conditions
  readonly health: Health
  /** Nameplates that were drawn before this one and refused. */
  readonly refused: number
}

/** A state far beyond what a visit meets: 40 % to 160 % charge, several faults at once, weather of any season. */
export function drawState(device: Device['kind'], random: Random): DrawnState {
  for (let refused = 0; ; refused++) {
    const system = drawSized(device, random)
    const at = system && drawWeather(system, random)
    if (system && at) return { system, at, health: drawHealth(system, random), refused }
  }
}

function drawSized(device: Device['kind'], { uniform, one }: Random): System | undefined {
  const properties = tables(one(REFRIGERANTS))
  const capacity_W = uniform(3000, 20_000)
  const application = one(['comfort-cooling', 'comfort-cooling', 'heat-pump-cooling', 'medium-temperature'] as const)
  const isCold = application === 'medium-temperature'
  const perWatt = uniform(1.8e-4, 5e-4) * (isCold ? 1.6 : 1) * (properties.name === 'R-290' ? 0.5 : 1)
  const sized = size({
    properties,
    application,
    device,
    capacity_W,
    charge_kg: capacity_W * perWatt,
    efficiency: { kind: 'cop', cop: uniform(2.5, 4) * (isCold ? 0.75 : 1) },
    compressorType: one(['scroll', 'reciprocating', 'rotary'] as const),
    ...(uniform(0, 1) < 0.2 ? { receiver: {} } : {}),
    ...(uniform(0, 1) < 0.2 ? { accumulator: true } : {}),
  })
  return sized.ok ? sized.value : undefined
}

function drawWeather({ trips, rated }: System, { uniform }: Random): Conditions | undefined {
  const isCold = trips.frostIsNormal
  const wetBulb = isCold ? rated.conditions.indoor.dryBulb_K + uniform(-6, 12) : uniform(285, 299)
  const at = conditions(uniform(283, 321), wetBulb + (isCold ? uniform(0.5, 2) : uniform(1, 14)), wetBulb)
  return at.ok ? at.value : undefined
}

function drawHealth({ rated }: System, { uniform }: Random): Health {
  const sometimes = (low: number, high: number, sound: number) => (uniform(0, 1) < 0.3 ? uniform(low, high) : sound)
  return {
    charge_kg: rated.charge_kg * uniform(0.4, 1.6),
    restriction_Pa: sometimes(0, 1e6, SOUND.restriction_Pa),
    nonCondensable_Pa: sometimes(0, 3e5, SOUND.nonCondensable_Pa),
    wear: sometimes(0, 0.4, SOUND.wear),
    indoorAirShare: sometimes(0.3, 1.3, SOUND.indoorAirShare),
    outdoorAirShare: sometimes(0.3, 1.3, SOUND.outdoorAirShare),
    deviceShare: sometimes(0.5, 1.5, SOUND.deviceShare),
  }
}
