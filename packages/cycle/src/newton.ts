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
/** Where no step lowers the residuals any more, at a corner of the functions, this is still a solution. */
const CLOSE_ENOUGH = 1e-7
const DIFFERENCE = 1e-7
const MOST_ITERATIONS = 40
const MOST_HALVINGS = 8

/**
 * Newton's method with capped steps and backtracking on the sum of squares.
 *
 * The slopes are one-sided differences over 1e-7 of a large change: the functions are closed forms good to 1e-14, so
 * the slopes are good to six digits and the convergence is as quadratic as with exact ones, at four evaluations. Where
 * no step along them lowers the residuals the search sits at a corner, and the slopes of its other side are tried.
 */
export function newton(f: Function3, start: Vector3, cap: Vector3): NewtonResult {
  let x = start
  let residual = f(x)
  for (let iterations = 0; iterations < MOST_ITERATIONS; iterations++) {
    if (largest(residual) < CLOSED) return { x, residual, iterations, converged: true }
    const better = stepped(f, x, residual, cap, DIFFERENCE) ?? stepped(f, x, residual, cap, -DIFFERENCE)
    if (!better) return { x, residual, iterations, converged: largest(residual) < CLOSE_ENOUGH }
    x = better.x
    residual = better.residual
  }
  return { x, residual, iterations: MOST_ITERATIONS, converged: largest(residual) < CLOSE_ENOUGH }
}

/** The first point along the capped Newton step, halved again and again, that lowers the residuals. */
function stepped(f: Function3, x: Vector3, r: Vector3, cap: Vector3, difference: number) {
  const columns = slopes(f, x, r, difference)
  if (!(Math.abs(triple(...columns)) > 1e-14)) return undefined
  const step = stepFrom(columns, r)
  let share = 1 / Math.max(1, Math.abs(step[0]) / cap[0], Math.abs(step[1]) / cap[1], Math.abs(step[2]) / cap[2])
  const norm = squares(r)
  for (let halvings = 0; halvings <= MOST_HALVINGS; halvings++, share /= 2) {
    const trial: Vector3 = [x[0] + share * step[0], x[1] + share * step[1], x[2] + share * step[2]]
    const residual = f(trial)
    if (squares(residual) < norm * (1 - 1e-4 * share)) return { x: trial, residual }
  }
  return undefined
}

/** Columns of the Jacobian at x, where f is r. */
export type Slopes = readonly [Vector3, Vector3, Vector3]

export function slopes(f: Function3, x: Vector3, r: Vector3, difference = DIFFERENCE): Slopes {
  return [
    slope(f([x[0] + difference, x[1], x[2]]), r, difference),
    slope(f([x[0], x[1] + difference, x[2]]), r, difference),
    slope(f([x[0], x[1], x[2] + difference]), r, difference),
  ]
}

/** −J⁻¹ r by Cramer's rule. */
export function stepFrom([a, b, c]: Slopes, r: Vector3): Vector3 {
  const determinant = triple(a, b, c)
  return [-triple(r, b, c) / determinant, -triple(a, r, c) / determinant, -triple(a, b, r) / determinant]
}

const slope = (there: Vector3, here: Vector3, difference: number): Vector3 => [
  (there[0] - here[0]) / difference,
  (there[1] - here[1]) / difference,
  (there[2] - here[2]) / difference,
]

/** a · (b × c). */
const triple = (a: Vector3, b: Vector3, c: Vector3): number =>
  a[0] * (b[1] * c[2] - b[2] * c[1]) + a[1] * (b[2] * c[0] - b[0] * c[2]) + a[2] * (b[0] * c[1] - b[1] * c[0])

const largest = (r: Vector3) => Math.max(Math.abs(r[0]), Math.abs(r[1]), Math.abs(r[2]))
const squares = (r: Vector3) => r[0] * r[0] + r[1] * r[1] + r[2] * r[2]
