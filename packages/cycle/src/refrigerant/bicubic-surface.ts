import { Matrix, solve } from 'ml-matrix'

/**
 * Several quantities over a grid, evenly spaced both ways, as one spline of uniform cubic basis functions: sixteen
 * coefficients around a point give its value. Those of all quantities at one node lie together. Beyond its edges the
 * surface is held at their value.
 */
export interface BicubicSurface {
  readonly rows: number
  readonly columns: number
  readonly quantities: number
  /** (rows + 2) × (columns + 2) × quantities. */
  readonly coefficients: Float64Array
}

/** The spline through `samples`, one matrix of rows by columns for each quantity. */
export function bicubicSurface(samples: readonly Matrix[]): BicubicSurface {
  const [{ rows, columns }, quantities] = [samples[0]!, samples.length]
  const width = columns + 2
  const coefficients = new Float64Array((rows + 2) * width * quantities)
  const [down, across] = [collocation(rows), collocation(columns)]
  for (const [q, sample] of samples.entries()) {
    const along = solve(across, padded(sample.transpose())).transpose()
    const both = solve(down, padded(along))
    for (let i = 0; i < rows + 2; i++) {
      for (let j = 0; j < width; j++) coefficients[(i * width + j) * quantities + q] = both.get(i, j)
    }
  }
  return { rows, columns, quantities, coefficients }
}

/** What a spline has to be at each node, and at either end that its third derivative does not jump there. */
function collocation(nodes: number): Matrix {
  const equations = Matrix.zeros(nodes + 2, nodes + 2)
  for (let i = 0; i < nodes; i++) {
    for (const [k, weight] of [1 / 6, 4 / 6, 1 / 6].entries()) equations.set(i + 1, i + k, weight)
  }
  for (const [k, weight] of [1, -4, 6, -4, 1].entries()) {
    equations.set(0, k, weight)
    equations.set(nodes + 1, nodes + 1 - k, weight)
  }
  return equations
}

function padded(values: Matrix): Matrix {
  const wide = Matrix.zeros(values.rows + 2, values.columns)
  wide.setSubMatrix(values, 1, 0)
  return wide
}

/**
 * The values of all quantities at a place, into `out`; both coordinates from 0 to 1 across the grid.
 *
 * Weights are plain locals: chosen in a loop over the rows the same took a third longer.
 */
export function evaluate(surface: BicubicSurface, downShare: number, acrossShare: number, out: Float64Array): void {
  const { coefficients, rows, columns, quantities } = surface
  const down = Math.min(Math.max(downShare, 0), 1) * (rows - 1)
  const across = Math.min(Math.max(acrossShare, 0), 1) * (columns - 1)
  const row = Math.min(down | 0, rows - 2)
  const column = Math.min(across | 0, columns - 2)
  const [t, u] = [down - row, across - column]
  const [a, b, c, d] = [outer(1 - t), inner(t), inner(1 - t), outer(t)]
  const [w, x, y, z] = [outer(1 - u), inner(u), inner(1 - u), outer(u)]
  const width = (columns + 2) * quantities
  const first = row * width + column * quantities
  for (let q = 0, i = first; q < quantities; q++, i++) {
    const [j, k, l] = [i + width, i + 2 * width, i + 3 * width]
    out[q] =
      a * along(coefficients, i, quantities, w, x, y, z) +
      b * along(coefficients, j, quantities, w, x, y, z) +
      c * along(coefficients, k, quantities, w, x, y, z) +
      d * along(coefficients, l, quantities, w, x, y, z)
  }
}

/** The uniform cubic basis at a place t past a node: inner for the two nodes beside it, outer for the two beyond. */
const outer = (t: number): number => (t * t * t) / 6
const inner = (t: number): number => (4 + t * t * (3 * t - 6)) / 6

function along(c: Float64Array, i: number, by: number, w: number, x: number, y: number, z: number): number {
  return w * c[i]! + x * c[i + by]! + y * c[i + 2 * by]! + z * c[i + 3 * by]!
}
