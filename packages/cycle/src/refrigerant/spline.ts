/**
 * Natural cubic splines of several quantities over one shared, evenly spaced coordinate. Outside the nodes each
 * quantity goes on in a straight line, so that an iteration that strays there finds its way back.
 */
export interface SplineTable {
  readonly first: number
  readonly step: number
  readonly count: number
  /** Node values and second derivatives, quantity by quantity. */
  readonly values: readonly Float64Array[]
  readonly curvatures: readonly Float64Array[]
}

export function splineTable(first: number, last: number, columns: readonly Float64Array[]): SplineTable {
  const count = columns[0]!.length
  const step = (last - first) / (count - 1)
  return { first, step, count, values: columns, curvatures: columns.map((column) => curvature(column, step)) }
}

/** Where a coordinate lies in the table; found once and used for every quantity. */
export interface SplinePlace {
  readonly cell: number
  readonly fraction: number
}

export function placeIn({ first, step, count }: SplineTable, x: number): SplinePlace {
  const position = (x - first) / step
  const cell = Math.min(Math.max(Math.floor(position), 0), count - 2)
  return { cell, fraction: position - cell }
}

export function interpolate(table: SplineTable, quantity: number, { cell, fraction: t }: SplinePlace): number {
  const y = table.values[quantity]!
  const c = table.curvatures[quantity]!
  const y0 = y[cell]!
  const y1 = y[cell + 1]!
  const c0 = c[cell]!
  const c1 = c[cell + 1]!
  const h2 = (table.step * table.step) / 6
  if (t < 0) return y0 + t * (y1 - y0 - h2 * (2 * c0 + c1))
  if (t > 1) return y1 + (t - 1) * (y1 - y0 + h2 * (c0 + 2 * c1))
  const u = 1 - t
  return u * y0 + t * y1 + h2 * (u * (u * u - 1) * c0 + t * (t * t - 1) * c1)
}

/** Second derivatives of the natural spline, by elimination of its tridiagonal system. */
function curvature(y: Float64Array, h: number): Float64Array {
  const n = y.length
  const c = new Float64Array(n)
  const upper = new Float64Array(n)
  for (let i = 1; i < n - 1; i++) {
    const pivot = 4 - upper[i - 1]!
    upper[i] = 1 / pivot
    const second = (6 * (y[i + 1]! - 2 * y[i]! + y[i - 1]!)) / (h * h)
    c[i] = (second - c[i - 1]!) / pivot
  }
  for (let i = n - 2; i > 0; i--) c[i] = c[i]! - upper[i]! * c[i + 1]!
  return c
}
