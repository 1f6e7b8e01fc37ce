/**
 * Several quantities over one evenly spaced coordinate, as natural cubic splines kept cell by cell: the four
 * coefficients of a quantity lie together, the quantities of a cell side by side. Outside the nodes each quantity goes
 * on in a straight line, so that an iteration that strays there finds its way back.
 */
export interface CubicCurves {
  readonly first: number
  readonly step: number
  readonly cells: number
  readonly quantities: number
  readonly coefficients: Float64Array
}

export function cubicCurves(first: number, last: number, columns: readonly Float64Array[]): CubicCurves {
  const cells = columns[0]!.length - 1
  const step = (last - first) / cells
  const quantities = columns.length
  const coefficients = new Float64Array(4 * cells * quantities)
  for (const [q, y] of columns.entries()) {
    const curvature = curvatures(y)
    for (let i = 0; i < cells; i++) {
      const [c0, c1] = [curvature[i]!, curvature[i + 1]!]
      coefficients.set([y[i]!, y[i + 1]! - y[i]! - (2 * c0 + c1) / 6, c0 / 2, (c1 - c0) / 6], 4 * (i * quantities + q))
    }
  }
  return { first, step, cells, quantities, coefficients }
}

/** Where a coordinate lies: the first coefficient of its cell and the weights of the second to fourth. */
export interface CurvePlace {
  readonly start: number
  readonly linear: number
  readonly square: number
  readonly cube: number
}

export function placeIn({ first, step, cells, quantities }: CubicCurves, x: number): CurvePlace {
  const position = (x - first) / step
  const cell = Math.min(Math.max(Math.floor(position), 0), cells - 1)
  const t = position - cell
  const start = 4 * quantities * cell
  if (t < 0) return { start, linear: t, square: 0, cube: 0 }
  if (t > 1) return { start, linear: t, square: 2 * t - 1, cube: 3 * t - 2 }
  return { start, linear: t, square: t * t, cube: t * t * t }
}

export function interpolate({ coefficients: c }: CubicCurves, quantity: number, place: CurvePlace): number {
  const i = place.start + 4 * quantity
  return c[i]! + place.linear * c[i + 1]! + place.square * c[i + 2]! + place.cube * c[i + 3]!
}

/** Second derivatives of the natural spline over the node's number, by elimination of its tridiagonal system. */
function curvatures(y: Float64Array): Float64Array {
  const n = y.length
  const c = new Float64Array(n)
  const upper = new Float64Array(n)
  for (let i = 1; i < n - 1; i++) {
    const pivot = 4 - upper[i - 1]!
    upper[i] = 1 / pivot
    c[i] = (6 * (y[i + 1]! - 2 * y[i]! + y[i - 1]!) - c[i - 1]!) / pivot
  }
  for (let i = n - 2; i > 0; i--) c[i] = c[i]! - upper[i]! * c[i + 1]!
  return c
}
