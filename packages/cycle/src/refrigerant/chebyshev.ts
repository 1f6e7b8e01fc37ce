/** A smooth function of two variables, each scaled to [−1, 1], as a product series of Chebyshev polynomials. */
export interface ChebyshevSurface {
  readonly rows: number
  readonly columns: number
  readonly coefficients: Float64Array
}

/** The places in [−1, 1] where a series of `count` terms wants its values. */
export function chebyshevNodes(count: number): Float64Array {
  return Float64Array.from({ length: count }, (_, i) => Math.cos((Math.PI * (i + 0.5)) / count))
}

/** The series through `value(i, j)` at the nodes of both directions. */
export function fitSurface(rows: number, columns: number, value: (i: number, j: number) => number): ChebyshevSurface {
  const samples = Array.from({ length: rows }, (_, i) => Float64Array.from({ length: columns }, (_, j) => value(i, j)))
  const coefficients = new Float64Array(rows * columns)
  for (let m = 0; m < rows; m++) {
    for (let n = 0; n < columns; n++) {
      let sum = 0
      for (let i = 0; i < rows; i++) {
        const row = Math.cos((m * Math.PI * (i + 0.5)) / rows)
        for (let j = 0; j < columns; j++) {
          sum += samples[i]![j]! * row * Math.cos((n * Math.PI * (j + 0.5)) / columns)
        }
      }
      coefficients[m * columns + n] = (sum * (m === 0 ? 1 : 2) * (n === 0 ? 1 : 2)) / (rows * columns)
    }
  }
  return { rows, columns, coefficients }
}

/** Chebyshev polynomials 0 … basis.length − 1 at x, held within [−1, 1]. */
export function fillBasis(basis: Float64Array, x: number): Float64Array {
  const z = Math.min(Math.max(x, -1), 1)
  basis[0] = 1
  basis[1] = z
  for (let n = 2; n < basis.length; n++) basis[n] = 2 * z * basis[n - 1]! - basis[n - 2]!
  return basis
}

export function surfaceAt({ rows, columns, coefficients }: ChebyshevSurface, row: Float64Array, column: Float64Array) {
  let sum = 0
  for (let m = 0, k = 0; m < rows; m++) {
    let inner = 0
    for (let n = 0; n < columns; n++) inner += coefficients[k++]! * column[n]!
    sum += row[m]! * inner
  }
  return sum
}
