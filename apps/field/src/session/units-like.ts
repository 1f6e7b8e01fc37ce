import { type Dimension, findUnit, preferredUnit, type UnitPreference } from '@chargewright/quantity'

/** A number and, behind it, all the rest. */
const BEHIND_NUMBER = /^\s*[-−–+]?[\d.,/¼½¾⅛⅜⅝⅞\s]*(.*)$/s

/**
 * The units in which a number is read that takes the place of a text: those of the page, but the unit of that text. So
 * 150 in the place of 1500 g is grams. A text with two units, such as `9 lb 6 oz`, leaves the units of the page.
 */
export function unitsLike(typed: string | undefined, [dimension]: readonly Dimension[], units: UnitPreference) {
  const [, spelling = ''] = BEHIND_NUMBER.exec(typed ?? '') ?? []
  const unit = dimension && findUnit(spelling, dimension)
  return !unit || unit === preferredUnit(dimension, units) ? units : { ...units, [dimension]: unit.symbol }
}
