const MOST_ITERATIONS = 80

/**
 * A root between two places where a function has opposite signs, by false position with the Illinois correction.
 *
 * @returns undefined where both ends have the same sign, or a value is not a number
 */
export function rootBetween(f: (x: number) => number, from: number, to: number, tolerance: number): number | undefined {
  let [a, b, fa, fb] = [from, to, f(from), f(to)]
  if (!(fa * fb <= 0)) return undefined
  for (let i = 0; i < MOST_ITERATIONS; i++) {
    const x = fa === fb ? (a + b) / 2 : b - (fb * (b - a)) / (fb - fa)
    const fx = f(x)
    if (fx === 0 || Math.abs(b - a) < tolerance || Math.abs(x - b) < tolerance * 1e-3) return x
    if (fx * fb < 0) [a, fa] = [b, fb]
    else fa /= 2
    ;[b, fb] = [x, fx]
  }
  return b
}
