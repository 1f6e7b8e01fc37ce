import { type Quantity, quantity } from '@chargewright/quantity'
import type { Case } from '../ruling.ts'

/** Liquid temperature where none was read: 100 °F, common practice. */
const USUAL_LIQUID = quantity('temperature', (100 + 459.67) * (5 / 9))

/** How warm the liquid of the high side is: as read, else as is usual. */
export function liquidTemperature({ visit }: Case): Quantity<'temperature'> {
  const read = visit.readings['liquid-temperature']?.quantity as Quantity<'temperature'> | undefined
  return read ?? USUAL_LIQUID
}
