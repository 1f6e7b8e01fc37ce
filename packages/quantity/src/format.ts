import { preferredUnit, type UnitPreference } from './preference.ts'
import type { Quantity } from './quantity.ts'
import { fromSi, type Unit } from './unit.ts'

/** Coverage factor of every ± shown: about 95 % of a normal distribution (JCGM 100:2008, 6.3.3). */
export const COVERAGE = 2

/**
 * `27.3 °F`; with `showUncertainty` also the expanded uncertainty where it is known, `27.3 ± 2.0 °F`. A mass of a pound
 * or more that is preferred in ounces is shown as `14 lb 6 oz`. Rounded here and nowhere else.
 */
export function format(q: Quantity, preference: UnitPreference, showUncertainty = false): string {
  const unit = preferredUnit(q.dimension, preference)
  if (showUncertainty && q.u !== undefined && q.u !== 0) {
    return `${formatNumber(q, unit)} ± ${formatUncertainty(q.u, unit)} ${unit.symbol}`
  }
  const hundredths = Math.round(Math.abs(fromSi(q.si, unit)) * 100)
  if (unit.symbol === 'oz' && hundredths >= 1600) return poundsAndOunces(hundredths, q.si < 0)
  return `${formatNumber(q, unit)} ${unit.symbol}`
}

/** The number alone, in `unit`, rounded as that unit is shown. */
export function formatNumber(q: Quantity, unit: Unit): string {
  return rounded(fromSi(q.si, unit), unit.decimals)
}

/** A known uncertainty is never rounded away: below the last digit shown it counts as one of it. */
function formatUncertainty(u: number, unit: Unit): string {
  return rounded(Math.max(Math.abs((COVERAGE * u) / unit.scale), 10 ** -unit.decimals), unit.decimals)
}

function poundsAndOunces(hundredths: number, negative: boolean): string {
  const lb = Math.floor(hundredths / 1600)
  const oz = (hundredths - lb * 1600) / 100
  return `${rounded(negative ? -lb : lb, 0)} lb ${oz} oz`
}

/** Fixed decimals with a true minus sign and no negative zero; from 10 000 on, thousands are set apart by a narrow space. */
function rounded(value: number, decimals: number): string {
  const fixed = Math.abs(value).toFixed(decimals)
  const [whole = '', fraction] = fixed.split('.')
  const grouped = whole.length > 4 ? whole.replace(/\B(?=(\d{3})+$)/g, '\u202f') : whole
  const digits = fraction === undefined ? grouped : `${grouped}.${fraction}`
  return value < 0 && Number(fixed) !== 0 ? `−${digits}` : digits
}
