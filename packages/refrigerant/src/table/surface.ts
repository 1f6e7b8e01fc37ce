import { fitSpline } from './spline.ts'

/** Spline coefficients of samples by rows, fitted along every row and then across the rows. */
export function fitSurface(samples: Float64Array, rows: number, columns: number): Float32Array {
  const width = columns + 2
  const along = new Float64Array(rows * width)
  for (let i = 0; i < rows; i++) fitSpline(samples, i * columns, 1, columns, along, i * width, 1)
  const both = new Float64Array((rows + 2) * width)
  for (let k = 0; k < width; k++) fitSpline(along, k, width, rows, both, k, width)
  return Float32Array.from(both)
}
