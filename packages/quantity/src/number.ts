/** What a typed number can mean: one value, two (`1,234`), or none. */
export type ReadNumber =
  | { readonly kind: 'one'; readonly value: number }
  | { readonly kind: 'two'; readonly either: string; readonly or: string }
  | { readonly kind: 'none' }

/**
 * Reads a number as people type it: decimal point or comma, thousands set apart by spaces, apostrophes, points or
 * commas, a true minus sign, an exponent, a vulgar fraction (`6 1/4`). `1,234` could be either and is not guessed.
 */
export function readNumber(text: string): ReadNumber {
  const t = text
    .trim()
    .replace(/[−–]/g, '-')
    .replace(/(\d)[\s'’\u00a0\u202f](?=\d{3}(?!\d))/g, '$1')
  const fraction = /^(-?)(?:(\d+)[\s-]+)?(\d+)\/(\d+)$/.exec(t)
  if (fraction) {
    const [, sign, whole = '0', top, bottom] = fraction
    const value = Number(whole) + Number(top) / Number(bottom)
    return Number(bottom) === 0 ? { kind: 'none' } : one(sign === '-' ? -value : value)
  }
  if (/^[-+]?\d{1,3},\d{3}$/.test(t) && !/^[-+]?0,/.test(t)) {
    return { kind: 'two', either: t.replace(',', ''), or: t.replace(',', '.') }
  }
  const plain = plainDecimal(t)
  return plain === undefined ? { kind: 'none' } : one(Number(plain))
}

function one(value: number): ReadNumber {
  return Number.isFinite(value) ? { kind: 'one', value } : { kind: 'none' }
}

/** The text with a decimal point and no thousands marks, or undefined if it is no number. */
function plainDecimal(t: string): string | undefined {
  if (/^[-+]?(\d+\.?\d*|\.\d+)(e[-+]?\d{1,3})?$/i.test(t)) return t
  if (/^[-+]?(\d+,\d*|,\d+)$/.test(t)) return t.replace(',', '.')
  if (/^[-+]?\d{1,3}(,\d{3})+(\.\d*)?$/.test(t)) return t.replaceAll(',', '')
  if (/^[-+]?\d{1,3}(\.\d{3})+,\d*$/.test(t)) return t.replaceAll('.', '').replace(',', '.')
  if (/^[-+]?\d{1,3}(\.\d{3}){2,}$/.test(t)) return t.replaceAll('.', '')
  return undefined
}
