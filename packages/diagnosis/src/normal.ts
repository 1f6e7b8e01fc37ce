/**
 * Chance that a standard normal variable lies below z.
 *
 * @source Abramowitz and Stegun 1964, eq. 26.2.17, REMEMBERED
 * @accuracy 7.5e-8
 */
export function normalBelow(z: number): number {
  const t = 1 / (1 + 0.2316419 * Math.abs(z))
  const series = t * (0.31938153 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))))
  const above = (Math.exp(-0.5 * z * z) / Math.sqrt(2 * Math.PI)) * series
  return z >= 0 ? 1 - above : above
}

/**
 * Chance that a sum of squares of `degrees` standard normal variables is at least this large.
 *
 * @source Wilson and Hilferty 1931: the cube root is nearly normal, REMEMBERED
 * @accuracy a tenth of the chance down to one in a thousand
 */
export function chiSquareAbove(value: number, degrees: number): number {
  const spread = 2 / (9 * degrees)
  return normalBelow((1 - spread - Math.cbrt(value / degrees)) / Math.sqrt(spread))
}
