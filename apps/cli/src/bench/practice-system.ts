import { sizedSystem } from '@chargewright/charging'
import { type Conditions, conditions, type System } from '@chargewright/cycle'
import { fail, type Problem, type Result } from '@chargewright/quantity'
import type { MeteringDevice } from '@chargewright/visit'
import { readSystemFile } from '../commands/system-file.ts'
import type { SeededRandom } from './seeded-random.ts'

/** Refrigerant of every practice system. */
export const PRACTICE_REFRIGERANT = 'R-410A'

/** The invented system of the bench with the device asked for: a three-ton air conditioner. */
export function practiceSystem(meteringDevice: MeteringDevice): Result<System, readonly Problem[]> {
  const visit = readSystemFile({
    name: 'Practice system (invented)',
    refrigerant: PRACTICE_REFRIGERANT,
    meteringDevice,
    application: 'comfort-cooling',
    nominalCapacity: '3 ton',
    nameplateCharge: '7 lb',
  })
  return visit.ok ? sizedSystem(visit.value.system) : visit
}

/** A summer's day in which charging is allowed: 27 °C to 38 °C outdoors, 24 °C to 28 °C and 45 % to 60 % indoors. */
export function practiceWeather(random: SeededRandom): Result<Conditions, readonly Problem[]> {
  const outdoor = 300.15 + 11 * random()
  const indoor = 297.15 + 4 * random()
  // Some 5 K to 8 K of wet-bulb depression is 60 % to 45 % humidity there.
  const found = conditions(outdoor, indoor, indoor - 5 - 3 * random())
  return found.ok ? found : fail([found.error])
}
