import { type CycleApplication, type Device, propertiesOf, type System, size } from '@chargewright/cycle'
import type { Case } from '../ruling.ts'

/**
 * The twin of the system at hand, sized from what its nameplate says. Undefined where the facts do not suffice (capacity
 * and charge at least), where they contradict each other, or where a receiver hides the charge anyway.
 */
export function twinOf({ visit, refrigerant }: Case): System | undefined {
  const { facts, figures } = visit.system
  const { nominalCapacity, nameplateCharge, nameplateSubcooling, lineLength, boxSetPoint } = figures
  if (!facts.meteringDevice || !facts.application || facts.receiver) return undefined
  if (!nominalCapacity || !nameplateCharge) return undefined
  const properties = propertiesOf(refrigerant)
  if (!properties.ok) return undefined
  const sized = size({
    properties: properties.value,
    application: facts.application satisfies CycleApplication,
    device: facts.meteringDevice satisfies Device['kind'],
    capacity_W: nominalCapacity.quantity.si,
    charge_kg: nameplateCharge.quantity.si,
    ...(nameplateSubcooling ? { subcooling_K: nameplateSubcooling.quantity.si } : {}),
    ...(lineLength ? { lineLength_m: lineLength.quantity.si } : {}),
    ...(boxSetPoint ? { boxTemperature_K: boxSetPoint.quantity.si } : {}),
    ...(facts.accumulator ? { accumulator: true } : {}),
  })
  return sized.ok ? sized.value : undefined
}
