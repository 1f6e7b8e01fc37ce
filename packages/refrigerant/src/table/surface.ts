import { fitSpline } from './spline.ts'

/**
 * Spline coefficients of samples by rows, fitted along every row and then across the rows. Rounded to single precision,
 * as they are stored, but kept in double, because widening thirty-two of them costs a look-up 2 to 3 % of its time.
 */
export function fitSurface(samples: Float64Array, rows: number, columns: number): Float64Array {
  const width = columns + 2
  const along = new Float64Array(rows * width)
  for (let i = 0; i < rows; i++) fitSpline(samples, i * columns, 1, columns, along, i * width, 1)
  const both = new Float64Array((rows + 2) * width)
  for (let k = 0; k < width; k++) fitSpline(along, k, width, rows, both, k, width)
  return both.map(Math.fround)
}
