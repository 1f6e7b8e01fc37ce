import {
  type Dimension,
  format,
  formatNumber,
  preferredUnit,
  type Quantity,
  type UnitPreference,
} from '@chargewright/quantity'

/** The number large and its unit small, where they can stand apart; pounds and ounces cannot. */
export function shownQuantity(quantity: Quantity | undefined, dimension: Dimension, units: UnitPreference) {
  const unit = preferredUnit(quantity?.dimension ?? dimension, units)
  if (!quantity) return { number: '', unit: unit.symbol }
  const number = formatNumber(quantity, unit)
  const whole = format(quantity, units)
  return whole === `${number} ${unit.symbol}` ? { number, unit: unit.symbol } : { number: whole, unit: '' }
}

/** Whether a unit stands in the text itself, so that none is wanted beside it. */
export const namesItsUnit = (text: string) => /[^\d\s.,+\-−/'’¼½¾⅛⅜⅝⅞]/.test(text)
