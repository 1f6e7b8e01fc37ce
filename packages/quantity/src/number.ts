/** What a typed number can mean: one value, two (`1,234`), or none. */
export type ReadNumber =
  | { readonly kind: 'one'; readonly value: number }
  | { readonly kind: 'two'; readonly either: string; readonly or: string }
  | { readonly kind: 'none' }

/** Characters that a number may begin and end with, for use inside a character class. */
export const DIGIT = '\\d¼½¾⅛⅜⅝⅞'

/**
 * Reads a number as people type it: decimal point or comma, thousands set apart by spaces, apostrophes, points or
 * commas, an exponent, a vulgar fraction (`6 1/4`, `6¼`). `1,234` could be either and is not guessed.
 *
 * Every pattern is anchored and has one way to match, so that a long text takes time in proportion to its length.
 */
export function readNumber(text: string): ReadNumber {
  const t = text
    .replace(/[¼½¾⅛⅜⅝⅞]/g, (one) => ` ${one.normalize('NFKC').replace('⁄', '/')}`)
    .trim()
    .replace(/^([-+])\s+/, '$1')
  const fraction = /^([-+]?)(?:(\d+)[\s-]+)?(\d+)\/(\d+)$/.exec(t)
  if (fraction) {
    const [, sign, whole, top, bottom] = fraction
    const part = Number(top) / Number(bottom)
    const proper = whole === undefined || part < 1
    return proper ? one((sign === '-' ? -1 : 1) * (Number(whole ?? 0) + part)) : NONE
  }
  if (/^[-+]?[1-9]\d{0,2},\d{3}$/.test(t)) {
    return { kind: 'two', either: t.replace(',', ''), or: t.replace(',', '.') }
  }
  const plain = plainDecimal(t)
  return plain === undefined ? NONE : one(Number(plain))
}

const NONE: ReadNumber = { kind: 'none' }

function one(value: number): ReadNumber {
  return Number.isFinite(value) ? { kind: 'one', value } : NONE
}

/** The text with a decimal point and no thousands marks, or undefined if it is no number. */
function plainDecimal(t: string): string | undefined {
  if (/^[-+]?(\d+(\.\d*)?|\.\d+)(e[-+]?\d{1,3})?$/i.test(t)) return t
  if (/^[-+]?(\d+,\d*|,\d+)$/.test(t)) return t.replace(',', '.')
  if (/^[-+]?\d{1,3}([\s'])\d{3}(\1\d{3})*([.,]\d*)?$/.test(t)) return t.replace(/[\s']/g, '').replace(',', '.')
  if (/^[-+]?\d{1,3}(,\d{3})+(\.\d*)?$/.test(t)) return t.replaceAll(',', '')
  if (/^[-+]?\d{1,3}(\.\d{3})+,\d*$/.test(t)) return t.replaceAll('.', '').replace(',', '.')
  if (/^[-+]?\d{1,3}(\.\d{3}){2,}$/.test(t)) return t.replaceAll('.', '')
  return undefined
}
