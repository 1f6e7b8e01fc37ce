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

/** Where a coordinate from 0 to 1 lies among nodes: its cell, and how far along it. */
export function cellAt(share: number, nodes: number): { readonly cell: number; readonly t: number } {
  const position = Math.min(Math.max(share, 0), 1) * (nodes - 1)
  const cell = Math.min(position | 0, nodes - 2)
  return { cell, t: position - cell }
}

/**
 * The values of up to three quantities at a place, into `out`; both coordinates from 0 to 1 across the grid.
 *
 * The sums run over all quantities at once, because their coefficients lie side by side.
 */
export function evaluate(surface: BicubicSurface, downShare: number, acrossShare: number, out: Float64Array): void {
  const { coefficients: c, rows, columns, quantities } = surface
  const down = cellAt(downShare, rows)
  const across = cellAt(acrossShare, columns)
  const [t, u] = [down.t, across.t]
  const w0 = ((1 - u) * (1 - u) * (1 - u)) / 6
  const w1 = (4 + u * u * (3 * u - 6)) / 6
  const w3 = (u * u * u) / 6
  const w2 = 1 - w0 - w1 - w3
  const width = (columns + 2) * quantities
  let i = down.cell * width + across.cell * quantities
  out.fill(0)
  for (let m = 0; m < 4; m++, i += width) {
    const weight =
      m === 0
        ? ((1 - t) * (1 - t) * (1 - t)) / 6
        : m === 1
          ? (4 + t * t * (3 * t - 6)) / 6
          : m === 2
            ? (1 + t * (3 + t * (3 - 3 * t))) / 6
            : (t * t * t) / 6
    for (let q = 0, k = i; q < quantities; q++, k++) {
      out[q]! +=
        weight * (w0 * c[k]! + w1 * c[k + quantities]! + w2 * c[k + 2 * quantities]! + w3 * c[k + 3 * quantities]!)
    }
  }
}
