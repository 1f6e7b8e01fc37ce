import {
  type Dimension,
  format,
  formatNumber,
  formatUncertainty,
  preferredUnit,
  type Quantity,
  shownUnit,
  type UnitPreference,
} from '@chargewright/quantity'

/**
 * The number large and its unit small, where they can stand apart; pounds and ounces cannot. `within` is how far off it
 * may be, where that is known.
 */
export function shownQuantity(quantity: Quantity | undefined, dimension: Dimension, units: UnitPreference) {
  if (!quantity) return { number: '', unit: preferredUnit(dimension, units).symbol }
  const unit = shownUnit(quantity, units)
  const number = formatNumber(quantity, unit)
  const whole = format(quantity, units)
  if (whole !== `${number} ${unit.symbol}`) return { number: whole, unit: '' }
  return { number, unit: unit.symbol, ...(quantity.u ? { within: formatUncertainty(quantity, unit) } : {}) }
}

/** Whether a unit stands in the text itself, so that none is wanted beside it. */
export const namesItsUnit = (text: string) => /[^\d\s.,+\-−/'’¼½¾⅛⅜⅝⅞]/.test(text)
