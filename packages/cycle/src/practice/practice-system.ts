import { fail, ok, type Problem, parse, type Result } from '@chargewright/quantity'
import { findRefrigerant } from '@chargewright/refrigerant'
import type { Device } from '../devices/device.ts'
import { propertiesOf } from '../refrigerant/properties.ts'
import { size } from '../size/size.ts'
import { type Conditions, conditions, type System } from '../system.ts'
import type { Random } from './scenario.ts'

/** What the plate of every practice system says: an invented three-ton air conditioner. */
export const PRACTICE_PLATE = {
  refrigerant: 'R-410A',
  application: 'comfort-cooling',
  nominalCapacity: '3 ton',
  nameplateCharge: '7 lb',
} as const

/**
 * The practice system with the metering device asked for.
 *
 * @param receiver with one after its condenser, and the charge that this takes besides
 */
export function practiceSystem(device: Device['kind'], receiver = false): Result<System, readonly Problem[]> {
  const refrigerant = findRefrigerant(PRACTICE_PLATE.refrigerant)
  const capacity = parse(PRACTICE_PLATE.nominalCapacity, 'cooling capacity')
  const charge = parse(PRACTICE_PLATE.nameplateCharge, 'mass')
  if (!refrigerant.ok) return fail([refrigerant.error])
  if (!capacity.ok) return fail([capacity.error])
  if (!charge.ok) return fail([charge.error])
  const properties = propertiesOf(refrigerant.value)
  if (!properties.ok) return fail([properties.error])
  const sized = size({
    properties: properties.value,
    application: PRACTICE_PLATE.application,
    device,
    capacity_W: capacity.value.si,
    charge_kg: (receiver ? CHARGE_WITH_RECEIVER : 1) * charge.value.si,
    ...(receiver ? { receiver: {} } : {}),
  })
  return sized.ok ? sized : fail([sized.error])
}

/** Over the charge without one, so that the receiver is a third full. */
const CHARGE_WITH_RECEIVER = 1.7

/** A summer's day in which charging is allowed: 27 °C to 38 °C outdoors, 24 °C to 28 °C and 45 % to 60 % indoors. */
export function practiceWeather(random: Random): Result<Conditions, readonly Problem[]> {
  const outdoor = 300.15 + 11 * random()
  const indoor = 297.15 + 4 * random()
  // Some 5 K to 8 K of wet-bulb depression is 60 % to 45 % humidity there.
  const found = conditions(outdoor, indoor, indoor - 5 - 3 * random())
  return found.ok ? ok(found.value) : fail([found.error])
}
