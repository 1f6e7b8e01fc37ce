import { preferredUnit, type UnitPreference } from './preference.ts'
import type { Quantity } from './quantity.ts'
import { fromSi, type Unit } from './unit.ts'

/** Coverage factor of every ± shown: about 95 % of a normal distribution (JCGM 100:2008, 6.3.3). */
export const COVERAGE = 2

/** `27.3 °F`; with `showUncertainty` also the expanded uncertainty, `27.3 ± 2.0 °F`. Rounded here and nowhere else. */
export function format(q: Quantity, preference: UnitPreference, showUncertainty = false): string {
  const unit = preferredUnit(q.dimension, preference)
  const pounds = unit.symbol === 'oz' && Math.abs(fromSi(q.si, unit)) >= 16 && !showUncertainty
  if (pounds) return poundsAndOunces(fromSi(q.si, unit))
  const number = formatNumber(q, unit)
  return showUncertainty && q.u !== undefined
    ? `${number} ± ${rounded(expanded(q.u, unit), Math.max(unit.decimals, 0))} ${unit.symbol}`
    : `${number} ${unit.symbol}`
}

/** The number alone, in `unit`, rounded as that unit is shown. */
export function formatNumber(q: Quantity, unit: Unit): string {
  return rounded(fromSi(q.si, unit), unit.decimals)
}

function expanded(u: number, unit: Unit): number {
  return Math.abs((COVERAGE * u) / unit.scale)
}

function poundsAndOunces(ounces: number): string {
  const sign = ounces < 0 ? '−' : ''
  const hundredths = Math.round(Math.abs(ounces) * 100)
  const lb = Math.floor(hundredths / 1600)
  const oz = (hundredths - lb * 1600) / 100
  return `${sign}${lb} lb ${oz} oz`
}

/** Fixed decimals with a true minus sign and no negative zero; thousands are set apart by a narrow space. */
function rounded(value: number, decimals: number): string {
  const fixed = Math.abs(value).toFixed(decimals)
  const [whole = '', fraction] = fixed.split('.')
  const grouped = whole.length > 4 ? whole.replace(/\B(?=(\d{3})+$)/g, '\u202f') : whole
  const digits = fraction === undefined ? grouped : `${grouped}.${fraction}`
  return value < 0 && Number(fixed) !== 0 ? `−${digits}` : digits
}
