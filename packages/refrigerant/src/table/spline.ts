/**
 * Uniform cubic B-splines: n samples at equal steps give n + 2 coefficients, and a value between samples i and i + 1 is
 * Σ w_k(t)·c_{i+k}, k = 0 … 3. Value, slope and curvature are continuous everywhere, with one number kept per node.
 */
export function weights(t: number, out: Float64Array): void {
  const s = 1 - t
  out[0] = outer(s)
  out[1] = inner(t)
  out[2] = inner(s)
  out[3] = outer(t)
}

// Divisions cost as much as ten multiplications.
const SIXTH = 1 / 6
const TWO_THIRDS = 2 / 3

/** Weight of the last of four coefficients at t; of the first one it is that at 1 − t. */
export function outer(t: number): number {
  return t * t * t * SIXTH
}

/** Weight of the second of four coefficients at t; of the third one it is that at 1 − t. */
export function inner(t: number): number {
  return t * t * (0.5 * t - 1) + TWO_THIRDS
}

/** Four coefficients from index i on, by their weights. */
export function weigh(f: Float64Array, i: number, a: number, b: number, c: number, d: number): number {
  return a * f[i]! + b * f[i + 1]! + c * f[i + 2]! + d * f[i + 3]!
}

/** Slopes of the weights by t. */
export function weightSlopes(t: number, out: Float64Array): void {
  const s = 1 - t
  out[0] = -(s * s) / 2
  out[1] = (t * (3 * t - 4)) / 2
  out[2] = -(s * (3 * s - 4)) / 2
  out[3] = (t * t) / 2
}

/**
 * Coefficients that pass through the samples, with no knot in the second and the last but one: the curve does not
 * pretend to know its end slopes.
 *
 * @param samples at least six values, `step` apart from `start`
 * @param out coefficients, `step` apart from `outStart`: two more than samples
 */
export function fitSpline(
  samples: Float64Array,
  start: number,
  step: number,
  count: number,
  out: Float64Array,
  outStart: number,
  outStep: number,
): void {
  const f = (i: number) => samples[start + i * step]!
  const n = count
  const c = new Float64Array(n + 2)
  const diagonal = new Float64Array(n)
  // The end condition and the first three interpolations leave c_1 alone in one equation; the same at the other end.
  c[2] = (8 * f(1) - f(0) - f(2)) / 6
  c[n - 1] = (8 * f(n - 2) - f(n - 1) - f(n - 3)) / 6
  // In between c_{i−1} + 4·c_i + c_{i+1} = 6·f_i, by elimination from the left.
  for (let i = 2; i <= n - 3; i++) {
    const left = i === 2 ? 0 : 1 / diagonal[i - 1]!
    diagonal[i] = 4 - left
    const carried = i === 2 ? c[2]! : c[i]! * left
    c[i + 1] = 6 * f(i) - carried
  }
  for (let i = n - 3; i >= 2; i--) c[i + 1] = (c[i + 1]! - c[i + 2]!) / diagonal[i]!
  c[1] = 6 * f(1) - 4 * c[2]! - c[3]!
  c[0] = 6 * f(0) - 4 * c[1]! - c[2]!
  c[n] = 6 * f(n - 2) - 4 * c[n - 1]! - c[n - 2]!
  c[n + 1] = 6 * f(n - 1) - 4 * c[n]! - c[n - 1]!
  for (let i = 0; i < n + 2; i++) out[outStart + i * outStep] = c[i]!
}
