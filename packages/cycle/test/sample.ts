import { findRefrigerant } from '@chargewright/refrigerant'
import {
  type Conditions,
  conditions,
  type Health,
  type Nameplate,
  type Properties,
  propertiesOf,
  type Readings,
  SOUND,
  type SteadyState,
  type System,
  size,
  solve,
} from '../src/index.ts'

/** Invented systems for the tests: three-ton air conditioners. A test has no use for one that does not size or solve. */
export function tables(name: string): Properties {
  const found = findRefrigerant(name)
  const made = found.ok ? propertiesOf(found.value) : found
  if (!made.ok) throw new Error(`no tables for ${name}`)
  return made.value
}

export function plate(device: Nameplate['device'], changed: Partial<Nameplate> = {}): Nameplate {
  return {
    properties: tables('R-410A'),
    application: 'comfort-cooling',
    device,
    capacity_W: 10_550,
    charge_kg: 3.2,
    efficiency: { kind: 'cop', cop: 3.3 },
    ...changed,
  }
}

/** The kind of unit for which the published target grid was made. */
export const olderUnit = (device: Nameplate['device'] = 'fixed-orifice'): Nameplate =>
  plate(device, { properties: tables('R-22'), efficiency: { kind: 'cop', cop: 2.8 }, compressorType: 'reciprocating' })

export function sized(nameplate: Nameplate): System {
  const system = size(nameplate)
  if (!system.ok) throw new Error(JSON.stringify(system.error))
  return system.value
}

export const CELSIUS = 273.15

/** Weather in °C. */
export function weather(outdoor: number, indoor: number, wetBulb: number): Conditions {
  const at = conditions(outdoor + CELSIUS, indoor + CELSIUS, wetBulb + CELSIUS)
  if (!at.ok) throw new Error(JSON.stringify(at.error))
  return at.value
}

export function steady(system: System, at: Conditions, health: Partial<Health>): SteadyState {
  const solution = solve(system, at, { ...SOUND, charge_kg: system.rated.charge_kg, ...health })
  if (solution.kind !== 'steady') throw new Error(JSON.stringify(solution))
  return solution
}

/** Readings with a share of the nameplate charge and a fault, at the rating conditions or others. */
export function readings(system: System, share: number, fault: Partial<Health> = {}, at?: Conditions): Readings {
  return steady(system, at ?? system.rated.conditions, { charge_kg: share * system.rated.charge_kg, ...fault }).readings
}
