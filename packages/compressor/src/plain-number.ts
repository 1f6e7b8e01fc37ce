/**
 * A number as spreadsheets write it, decimal point or decimal comma, with or without an exponent; undefined for
 * anything else. Coefficients have no unit, and `1,234` in a file whose fields a semicolon parts is a decimal.
 */
export function readNumber(text: string): number | undefined {
  const t = text.replace(/^[−–]/, '-').replace(',', '.')
  if (!/^[-+]?(?:\d+\.?\d*|\.\d+)(?:e[-+]?\d{1,3})?$/i.test(t)) return undefined
  const value = Number(t)
  return Number.isFinite(value) ? value : undefined
}
