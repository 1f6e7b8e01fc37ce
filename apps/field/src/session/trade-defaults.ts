import type { Application, MeteringDevice, SystemStatement } from '@chargewright/visit'

/** Devices that need a column of liquid before them, and so may stand behind a receiver. */
const VALVES: readonly (MeteringDevice | undefined)[] = ['thermostatic', 'electronic', 'automatic']

/**
 * What such a system usually is, to be confirmed at the unit: never a figure, since a figure is the maker's to give.
 *
 * @source common practice
 */
export function tradeDefaults(application: Application, stated: MeteringDevice | undefined): SystemStatement {
  const meteringDevice = stated ?? 'thermostatic'
  switch (application) {
    case 'comfort-cooling':
      return { meteringDevice, receiver: false, sightGlass: false }
    case 'heat-pump-cooling':
      return { meteringDevice, receiver: false, sightGlass: false, accumulator: true }
    case 'medium-temperature':
    case 'low-temperature': {
      const hasValve = VALVES.includes(meteringDevice)
      return { meteringDevice, receiver: hasValve, sightGlass: hasValve }
    }
  }
}
