import { roomOf } from './room-of.ts'
import type { AtRest } from './tool-bag.ts'
import type { Unit } from './unit.ts'

/** Pressure of the equalised circuit after a long rest at one temperature: saturation, and what gas adds to it. */
export function atRest({ fluid, ...unit }: Unit, charge_kg: number, ambient_K: number): AtRest {
  const saturated = fluid.bubblePressure(ambient_K)
  const { rhoLiquid, rhoVapour } = fluid.at(saturated)
  const room = roomOf({ fluid, ...unit })
  const inOil = unit.oil_kg * unit.oilTakes * 2
  const liquid = Math.max((charge_kg - inOil - room * rhoVapour) / (rhoLiquid - rhoVapour), 0)
  const gas = (unit.gas_Pa * (ambient_K / 298) * room) / (room - liquid)
  return { pressure_Pa: saturated + gas, ambient_K }
}
