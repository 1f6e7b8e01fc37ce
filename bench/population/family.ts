import type { RestrictionLaw } from './device-law.ts'
import type { VoidLaw } from './void-law.ts'

/** What a caller may hold fixed of the structure that is drawn otherwise: to see what a judgement rests on. */
export interface Family {
  readonly voidFraction?: VoidLaw
  /** Of orifices, capillaries and the seats of valves. */
  readonly deviceLaw?: RestrictionLaw
  /** Factor on production scatter and age; 1 unless given. */
  readonly spread?: number
}
