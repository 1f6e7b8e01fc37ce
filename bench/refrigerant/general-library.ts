import { scaleLinear } from 'd3-scale'

/** What one would reach for first: a general library's piecewise linear scale through the same curve. */
export function piecewiseLinear(xs: readonly number[], f: (x: number) => number): (x: number) => number {
  return scaleLinear(xs, xs.map(f))
}
