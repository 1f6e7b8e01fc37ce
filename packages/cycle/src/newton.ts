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
 * the slopes are good to six digits. While a step lowers the residuals at least fivefold the slopes are not taken anew
 * but corrected by what the step itself taught (Broyden's rank-one update), which costs nothing; else they are taken
 * anew. Where no step along fresh ones lowers the residuals the search sits at a corner, and its other side is tried.
 */
export function newton(f: Function3, start: Vector3, cap: Vector3): NewtonResult {
  let x = start
  let residual = f(x)
  let kept: Slopes | undefined
  for (let iterations = 0; iterations < MOST_ITERATIONS; iterations++) {
    if (largest(residual) < CLOSED) return { x, residual, iterations, converged: true }
    const better =
      (kept && stepped(f, x, residual, cap, kept)) ??
      stepped(f, x, residual, cap, slopes(f, x, residual, DIFFERENCE)) ??
      stepped(f, x, residual, cap, slopes(f, x, residual, -DIFFERENCE))
    if (!better) return { x, residual, iterations, converged: largest(residual) < CLOSE_ENOUGH }
    kept = squares(better.residual) < KEEP * squares(residual) ? corrected(x, residual, better) : undefined
    x = better.x
    residual = better.residual
  }
  return { x, residual, iterations: MOST_ITERATIONS, converged: largest(residual) < CLOSE_ENOUGH }
}

/** A fivefold fall of the residuals, squared. */
const KEEP = 0.04

interface Step {
  readonly x: Vector3
  readonly residual: Vector3
  readonly along: Slopes
}

/** The first point along the capped Newton step, halved again and again, that lowers the residuals. */
function stepped(f: Function3, x: Vector3, r: Vector3, cap: Vector3, along: Slopes): Step | undefined {
  if (!(Math.abs(triple(...along)) > 1e-14)) return undefined
  const step = stepFrom(along, r)
  let share = 1 / Math.max(1, Math.abs(step[0]) / cap[0], Math.abs(step[1]) / cap[1], Math.abs(step[2]) / cap[2])
  const norm = squares(r)
  for (let halvings = 0; halvings <= MOST_HALVINGS; halvings++, share /= 2) {
    const trial: Vector3 = [x[0] + share * step[0], x[1] + share * step[1], x[2] + share * step[2]]
    const residual = f(trial)
    if (squares(residual) < norm * (1 - 1e-4 * share)) return { x: trial, residual, along }
  }
  return undefined
}

/** J + (Δr − J Δx) Δxᵀ/|Δx|². */
function corrected(from: Vector3, r: Vector3, { x, residual, along: [a, b, c] }: Step): Slopes {
  const d: Vector3 = [x[0] - from[0], x[1] - from[1], x[2] - from[2]]
  const length = squares(d)
  const miss = (k: 0 | 1 | 2) => (residual[k] - r[k] - a[k] * d[0] - b[k] * d[1] - c[k] * d[2]) / length
  const m: Vector3 = [miss(0), miss(1), miss(2)]
  const column = (of: Vector3, by: number): Vector3 => [of[0] + m[0] * by, of[1] + m[1] * by, of[2] + m[2] * by]
  return [column(a, d[0]), column(b, d[1]), column(c, d[2])]
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
