/**
 * Corners made round, so that Newton's method sees a slope on both sides. `width` is the distance over which the
 * corner is rounded; far from it the exact value is returned to (width/z)².
 */
export const positivePart = (z: number, width: number): number => 0.5 * (z + Math.sqrt(z * z + width * width))

export const smoothMax = (a: number, b: number, width: number): number => b + positivePart(a - b, width)

export const smoothMin = (a: number, b: number, width: number): number => a - positivePart(a - b, width)

/** z held between 0 and 1, both corners rounded. */
export const unitClamp = (z: number, width: number): number => positivePart(z, width) - positivePart(z - 1, width)

/** (a − b)/ln(a/b), the mean of a driving force that decays exponentially from a to b, both positive. */
export function logMean(a: number, b: number): number {
  const q = (a - b) / (a + b)
  return Math.abs(q) < 1e-3 ? (0.5 * (a + b)) / (1 + (q * q) / 3) : (a - b) / Math.log(a / b)
}
