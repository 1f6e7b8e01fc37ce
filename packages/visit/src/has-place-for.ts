import type { ReadingId } from './reading-kind.ts'
import type { Application, MeteringDevice } from './system.ts'
import type { Visit } from './visit.ts'

const WITHOUT_BOX: readonly (Application | undefined)[] = ['comfort-cooling', 'heat-pump-cooling']
const WITHOUT_BULB: readonly (MeteringDevice | undefined)[] = ['capillary', 'fixed-orifice']

/**
 * Whether a system has the place where something is read. While it is not said what the system is, it may have any.
 *
 * @source common practice
 */
export function hasPlaceFor(
  reading: ReadingId,
  { application, meteringDevice }: Pick<Visit['system']['facts'], 'application' | 'meteringDevice'>,
): boolean {
  switch (reading) {
    case 'box-temperature':
      return !WITHOUT_BOX.includes(application)
    case 'evaporator-outlet-temperature':
      return !WITHOUT_BULB.includes(meteringDevice)
    default:
      return true
  }
}
