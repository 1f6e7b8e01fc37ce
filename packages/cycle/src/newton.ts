/** Three equations in three unknowns, scaled so that one is a large change of each. */
export type Vector3 = readonly [number, number, number]
export type Function3 = (x: Vector3) => Vector3

export interface NewtonResult {
  readonly x: Vector3
  readonly residual: Vector3
  readonly iterations: number
  readonly converged: boolean
}

const CLOSED = 1e-9
const DIFFERENCE = 1e-7
const MOST_ITERATIONS = 40
const MOST_HALVINGS = 8

/**
 * Newton's method with capped steps and backtracking on the sum of squares.
 *
 * The slopes are one-sided differences over 1e-7 of a large change: the functions are closed forms good to 1e-14, so
 * the slopes are good to six digits and the convergence is as quadratic as with exact ones, at four evaluations.
 */
export function newton(f: Function3, start: Vector3, cap: Vector3): NewtonResult {
  let x = start
  let r = f(x)
  for (let iterations = 0; iterations < MOST_ITERATIONS; iterations++) {
    if (largest(r) < CLOSED) return { x, residual: r, iterations, converged: true }
    const step = newtonStep(f, x, r)
    if (!step) return { x, residual: r, iterations, converged: false }
    const scale = 1 / Math.max(1, ...step.map((s, i) => Math.abs(s) / cap[i]!))
    let [share, taken] = [scale, false]
    const norm = squares(r)
    for (let halving = 0; halving <= MOST_HALVINGS; halving++, share /= 2) {
      const trial: Vector3 = [x[0] + share * step[0], x[1] + share * step[1], x[2] + share * step[2]]
      const there = f(trial)
      if (squares(there) < norm * (1 - 1e-4 * share)) {
        ;[x, r, taken] = [trial, there, true]
        break
      }
    }
    if (!taken) return { x, residual: r, iterations, converged: largest(r) < 1e-7 }
  }
  return { x, residual: r, iterations: MOST_ITERATIONS, converged: false }
}

const largest = (r: Vector3) => Math.max(Math.abs(r[0]), Math.abs(r[1]), Math.abs(r[2]))
const squares = (r: Vector3) => r[0] * r[0] + r[1] * r[1] + r[2] * r[2]

/** Solves J·step = −r by Cramer's rule; undefined where J is singular or not finite. */
function newtonStep(f: Function3, x: Vector3, r: Vector3): Vector3 | undefined {
  const [a, b, c] = [0, 1, 2].map((i) => {
    const there = f(x.map((value, j) => (i === j ? value + DIFFERENCE : value)) as unknown as Vector3)
    return there.map((value, j) => (value - r[j]!) / DIFFERENCE) as unknown as Vector3
  }) as [Vector3, Vector3, Vector3]
  const determinant = dot(a, cross(b, c))
  if (!(Math.abs(determinant) > 1e-14)) return undefined
  const minus: Vector3 = [-r[0], -r[1], -r[2]]
  return [
    dot(minus, cross(b, c)) / determinant,
    dot(a, cross(minus, c)) / determinant,
    dot(a, cross(b, minus)) / determinant,
  ]
}

const dot = (a: Vector3, b: Vector3) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2]
const cross = (a: Vector3, b: Vector3): Vector3 => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
]
