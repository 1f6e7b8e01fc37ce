import type { Observable } from '../../../packages/diagnosis/src/index.ts'
import type { ReadingSet } from '../../population/case.ts'

/** What must be read so that an observable is known; the air entering both coils always is. */
export const READINGS_BEHIND: Readonly<Record<Observable, readonly (keyof ReadingSet)[]>> = {
  evaporating: ['suctionPressure_Pa'],
  superheat: ['suctionPressure_Pa', 'suctionLine_K'],
  condensing: ['liquidPressure_Pa'],
  subcooling: ['liquidPressure_Pa', 'liquidLine_K'],
  discharge: ['dischargeLine_K'],
  condenserAirRise: ['condenserLeavingAir_K'],
  supplyAirDrop: ['supplyAir_K'],
  compressorPower: ['compressorPower_W'],
  power: ['power_W'],
  drierDrop: ['drierInlet_K', 'drierOutlet_K'],
  standstill: ['standstill'],
}

/** Without these nothing is judged. */
export const ALWAYS_READ = [
  'outdoor_K',
  'returnAir_K',
  'returnWetBulb_K',
  'suctionPressure_Pa',
  'suctionLine_K',
] as const satisfies readonly (keyof ReadingSet)[]

/** The set with only these readings in it. */
export function only(readings: ReadingSet, keys: ReadonlySet<keyof ReadingSet>): ReadingSet {
  const always: ReadonlySet<string> = new Set([...ALWAYS_READ, ...keys])
  return Object.fromEntries(Object.entries(readings).filter(([key]) => always.has(key))) as unknown as ReadingSet
}
