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
 * the slopes are good to six digits and the convergence is as quadratic as with exact ones, at four evaluations.
 */
export function newton(f: Function3, start: Vector3, cap: Vector3): NewtonResult {
  let x = start
  let r = f(x)
  for (let iterations = 0; iterations < MOST_ITERATIONS; iterations++) {
    if (largest(r) < CLOSED) return { x, residual: r, iterations, converged: true }
    const step = newtonStep(f, x, r)
    if (!step) return { x, residual: r, iterations, converged: false }
    let share = 1 / Math.max(1, Math.abs(step[0]) / cap[0], Math.abs(step[1]) / cap[1], Math.abs(step[2]) / cap[2])
    const norm = squares(r)
    let halvings = 0
    for (; halvings <= MOST_HALVINGS; halvings++, share /= 2) {
      const trial: Vector3 = [x[0] + share * step[0], x[1] + share * step[1], x[2] + share * step[2]]
      const there = f(trial)
      if (squares(there) < norm * (1 - 1e-4 * share)) {
        x = trial
        r = there
        break
      }
    }
    if (halvings > MOST_HALVINGS) return { x, residual: r, iterations, converged: largest(r) < CLOSE_ENOUGH }
  }
  return { x, residual: r, iterations: MOST_ITERATIONS, converged: false }
}

/** Solves J·step = −r; undefined where J is singular or not finite. */
function newtonStep(f: Function3, x: Vector3, r: Vector3): Vector3 | undefined {
  const columns = slopes(f, x, r)
  const determinant = triple(...columns)
  return Math.abs(determinant) > 1e-14 ? stepFrom(columns, r) : undefined
}

/** Columns of the Jacobian at x, where f is r. */
export type Slopes = readonly [Vector3, Vector3, Vector3]

export function slopes(f: Function3, x: Vector3, r: Vector3): Slopes {
  return [
    slope(f([x[0] + DIFFERENCE, x[1], x[2]]), r),
    slope(f([x[0], x[1] + DIFFERENCE, x[2]]), r),
    slope(f([x[0], x[1], x[2] + DIFFERENCE]), r),
  ]
}

/** −J⁻¹ r by Cramer's rule. */
export function stepFrom([a, b, c]: Slopes, r: Vector3): Vector3 {
  const determinant = triple(a, b, c)
  return [-triple(r, b, c) / determinant, -triple(a, r, c) / determinant, -triple(a, b, r) / determinant]
}

const slope = (there: Vector3, here: Vector3): Vector3 => [
  (there[0] - here[0]) / DIFFERENCE,
  (there[1] - here[1]) / DIFFERENCE,
  (there[2] - here[2]) / DIFFERENCE,
]

/** a · (b × c). */
const triple = (a: Vector3, b: Vector3, c: Vector3): number =>
  a[0] * (b[1] * c[2] - b[2] * c[1]) + a[1] * (b[2] * c[0] - b[0] * c[2]) + a[2] * (b[0] * c[1] - b[1] * c[0])

const largest = (r: Vector3) => Math.max(Math.abs(r[0]), Math.abs(r[1]), Math.abs(r[2]))
const squares = (r: Vector3) => r[0] * r[0] + r[1] * r[1] + r[2] * r[2]
