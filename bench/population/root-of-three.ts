type Three = readonly [number, number, number]

const STEP: Three = [1e-4, 1e-4, 1e-3]
/** Farther than this at once leaves the neighbourhood in which a slope means anything. */
const LONGEST: Three = [0.12, 0.12, 0.12]
const TOLERANCE = 3e-6
const ROUNDS = 40

/**
 * Where three residuals vanish: Newton with a difference Jacobian, improved by Broyden's update while that serves and
 * taken anew when it does not; steps are shortened until the residuals shrink.
 */
export function rootOfThree(residuals: (u: Three) => Three, start: Three): Three | undefined {
  let u = start
  let r = residuals(u)
  if (!r.every(Number.isFinite)) return undefined
  let J = jacobian(residuals, u, r)
  let isFresh = true
  for (let round = 0; round < ROUNDS; round++) {
    const size = norm(r)
    if (size < TOLERANCE) return u
    const full = solve3(J, r)
    const share = full ? Math.min(1, ...full.map((d, k) => LONGEST[k]! / Math.max(Math.abs(d), 1e-12))) : 0
    let accepted = false
    for (let cut = share; full && cut > 0.02 * share; cut *= 0.4) {
      const next: Three = [u[0] - cut * full[0], u[1] - cut * full[1], u[2] - cut * full[2]]
      const at = residuals(next)
      if (at.every(Number.isFinite) && norm(at) < (1 - 0.1 * cut) * size) {
        J = broyden(J, [next[0] - u[0], next[1] - u[1], next[2] - u[2]], [at[0] - r[0], at[1] - r[1], at[2] - r[2]])
        isFresh = false
        u = next
        r = at
        accepted = true
        break
      }
      // An old slope is not worth many trials.
      if (!isFresh) break
    }
    if (accepted && norm(r) < 0.5 * size) continue
    if (!accepted && isFresh) return norm(r) < 1e-4 ? u : undefined
    J = jacobian(residuals, u, r)
    isFresh = true
  }
  return undefined
}

const norm = (r: Three) => Math.hypot(r[0], r[1], r[2])

type Matrix = readonly [Three, Three, Three]

/** Rows are residuals. */
function jacobian(residuals: (u: Three) => Three, u: Three, r: Three): Matrix {
  const columns = STEP.map((step, k) => {
    const moved: Three = [u[0] + (k === 0 ? step : 0), u[1] + (k === 1 ? step : 0), u[2] + (k === 2 ? step : 0)]
    const at = residuals(moved)
    return [(at[0] - r[0]) / step, (at[1] - r[1]) / step, (at[2] - r[2]) / step]
  })
  const row = (i: number): Three => [columns[0]![i]!, columns[1]![i]!, columns[2]![i]!]
  return [row(0), row(1), row(2)]
}

function broyden(J: Matrix, du: Three, dr: Three): Matrix {
  const length = du[0] ** 2 + du[1] ** 2 + du[2] ** 2
  const row = (j: Three, d: number): Three => {
    const miss = (d - j[0] * du[0] - j[1] * du[1] - j[2] * du[2]) / length
    return [j[0] + miss * du[0], j[1] + miss * du[1], j[2] + miss * du[2]]
  }
  return [row(J[0], dr[0]), row(J[1], dr[1]), row(J[2], dr[2])]
}

function solve3([a, b, c]: Matrix, r: Three): Three | undefined {
  const det = dot(a, cross(b, c))
  if (!(Math.abs(det) > 1e-14)) return undefined
  const column = (k: 0 | 1 | 2): Three => [a[k], b[k], c[k]]
  const [x, y, z] = [column(0), column(1), column(2)]
  return [dot(r, cross(y, z)) / det, dot(x, cross(r, z)) / det, dot(x, cross(y, r)) / det]
}

const cross = (a: Three, b: Three): Three => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
]
const dot = (a: Three, b: Three) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2]
