import { COVERAGE, format, fromSi, preferredUnit, type Quantity, type UnitPreference } from '@chargewright/quantity'

/** The number that the reader sees. */
export const shown = (q: Quantity, preference: UnitPreference): number =>
  fromSi(q.si, preferredUnit(q.dimension, preference))

/** The half-width of the shown ±, as a number of the same unit; 0 for an exact value. */
export const reach = (q: Quantity, preference: UnitPreference): number =>
  Math.abs((COVERAGE * (q.u ?? 0)) / preferredUnit(q.dimension, preference).scale)

/** `26.8 ± 1.7 °F`, and without the ± where none is known. */
export const written = (q: Quantity, preference: UnitPreference): string => format(q, preference, true)

/** The value without what is not known about it, for a line that is drawn at one place. */
export const bare = <Q extends Quantity>({ dimension, si }: Q): Quantity => ({ dimension, si })
