import { type Dimension, findUnit, preferredUnit, type Unit, type UnitPreference } from '@chargewright/quantity'

/** The unit in which people go on after a larger one: 14 lb 6 oz. */
const SMALLER: Readonly<Record<string, string>> = { lb: 'oz', kg: 'g', ft: 'in', m: 'mm', h: 'min', min: 's' }

/** A number without a unit at the end of the text, and the unit that stands before it. */
const SECOND_AMOUNT = /^\s*[-−–+]?[\d.,/¼½¾⅛⅜⅝⅞][\d.,/¼½¾⅛⅜⅝⅞\s]*([a-z'’#]+)\.?\s*[\d.,/¼½¾⅛⅜⅝⅞][\d.,/¼½¾⅛⅜⅝⅞\s]*$/i

/** The unit that goes on from the one which stands in the text, if the text ends in a second amount: `14 lb 6` in ounces. */
export function secondUnit(text: string, dimension: Dimension): Unit | undefined {
  const [, spelling = ''] = SECOND_AMOUNT.exec(text) ?? []
  const smaller = SMALLER[findUnit(spelling, dimension)?.symbol ?? '']
  return smaller === undefined ? undefined : findUnit(smaller, dimension)
}

/** The unit in which a text that ends in a bare number is taken: that of a second amount, else the preferred one. */
export function impliedUnit(text: string, dimension: Dimension, units: UnitPreference): Unit {
  return secondUnit(text, dimension) ?? preferredUnit(dimension, units)
}
