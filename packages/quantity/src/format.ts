import { POUNDS_AND_OUNCES, shownUnit, type UnitPreference } from './preference.ts'
import type { Quantity } from './quantity.ts'
import type { Words } from './translate.ts'
import { fromSi, type Unit } from './unit.ts'

/** Coverage factor of every ± shown: about 95 % of a normal distribution (JCGM 100:2008, 6.3.3). */
export const COVERAGE = 2

/**
 * `27.3 °F`; with `showUncertainty` also the expanded uncertainty where it is known, `27.3 ± 2.0 °F`. A mass of a pound
 * or more is shown as `14 lb 6 oz` where pounds and ounces are preferred, and within how much as `14 lb 6 oz ± 0.3 oz`. Rounded here and nowhere else.
 *
 * @param words of the reader: a few units hold one, as `CFM per ton`
 */
export function format(
  q: Quantity,
  preference: UnitPreference,
  showUncertainty = false,
  words: Words = (english) => english,
): string {
  const unit = shownUnit(q, preference)
  const symbol = words(unit.symbol)
  const within = showUncertainty && q.u ? `± ${formatUncertainty(q, unit)} ${symbol}` : undefined
  if (q.dimension === 'mass' && preference.mass === POUNDS_AND_OUNCES) {
    const ounces = fromSi(Math.abs(q.si), unit)
    const hundredths = hundredthsOfOunce(ounces, within || ounces < HEAVY_OZ ? TENTH : WHOLE)
    if (hundredths >= POUND) {
      const whole = poundsAndOunces(hundredths, q.si < 0)
      return within ? `${whole} ${within}` : whole
    }
  }
  return `${formatNumber(q, unit)} ${within ?? symbol}`
}

/** The number alone, in `unit`, rounded as that unit is shown. */
export function formatNumber(q: Quantity, unit: Unit): string {
  const value = fromSi(q.si, unit)
  if (unit.symbol === 'oz') {
    const hundredths = hundredthsOfOunce(Math.abs(value), Math.abs(value) < LIGHT_OZ ? HUNDREDTH : TENTH)
    return rounded((value < 0 ? -hundredths : hundredths) / 100, hundredths % TENTH === 0 ? 1 : 2)
  }
  // Nobody waits for a tenth of an hour of a whole one: 24 h.
  if (unit.symbol === 'h') return rounded(Number(value.toFixed(unit.decimals)), value.toFixed(1).endsWith('0') ? 0 : 1)
  return rounded(value, unit.decimals)
}

/** The expanded uncertainty alone, in `unit`, as it stands behind the ±. */
export function formatUncertainty({ u }: Quantity, unit: Unit): string {
  // A known uncertainty is never rounded away: below the last digit shown it counts as one of it.
  return rounded(Math.max(Math.abs((COVERAGE * (u ?? 0)) / unit.scale), 10 ** -unit.decimals), unit.decimals)
}

// In hundredths of an ounce.
const POUND = 1600
const WHOLE = 100
const QUARTER = 25
const TENTH = 10
const HUNDREDTH = 1
/** How far from a quarter of an ounce a figure may lie and still be one that was printed. */
const PRINTED = 0.1

/** Under half an ounce lie the steps of scales and what a tiny charge may be off by: a tenth cannot tell them apart. */
const LIGHT_OZ = 0.5

/** From ten pounds on a tenth of an ounce is no more than noise. */
const HEAVY_OZ = 160

/** An ounce to the step that a charging scale shows; a quarter of an ounce, as nameplates print it, keeps its digits. */
function hundredthsOfOunce(value: number, step: number): number {
  const printed = Math.round((value * 100) / QUARTER) * QUARTER
  return Math.abs(value * 100 - printed) < PRINTED ? printed : Math.round((value * 100) / step) * step
}

function poundsAndOunces(hundredths: number, negative: boolean): string {
  const lb = Math.floor(hundredths / POUND)
  const oz = (hundredths - lb * POUND) / 100
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
