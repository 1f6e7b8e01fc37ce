import { findUnit, preferredUnit, type UnitPreference } from '@chargewright/quantity'
import type { FigureKind } from '@chargewright/visit'
import { quantityInWords } from './in-words.ts'
import { understand } from './understand.ts'

/**
 * What a figure looks like in the reader's own units: the example that was chosen in them, and converted only where
 * there is none, for a converted example is a number that nobody types.
 */
export function exampleInUnits({ label, accepts, example, metric }: FigureKind, units: UnitPreference): string {
  const [dimension] = accepts
  const own = dimension && preferredUnit(dimension, units)
  const chosen = [example, metric].find((text) => text && own && findUnit(unitOf(text), own.dimension) === own)
  if (chosen) return chosen.replace('-', '−').replaceAll(' ', '\u00a0')
  const read = understand(example, { label, accepts }, units)
  return read.ok ? quantityInWords(read.value.quantity, units) : example
}

/** What stands behind the last number: `oz` of `6 lb 4 oz`. */
const unitOf = (text: string): string => /[\d.]\s*([^\d.]+)$/.exec(text)?.[1] ?? ''
