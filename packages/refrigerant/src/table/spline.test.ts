import { describe, expect, it } from 'vitest'
import { fitSpline, weightSlopes, weights } from './spline.ts'

const w = new Float64Array(4)

function curve(count: number, f: (x: number) => number) {
  const samples = Float64Array.from({ length: count }, (_, i) => f(i / (count - 1)))
  const c = new Float64Array(count + 2)
  fitSpline(samples, 0, 1, count, c, 0, 1)
  const at = (x: number, basis: typeof weights) => {
    const u = x * (count - 1)
    const i = Math.min(Math.floor(u), count - 2)
    basis(u - i, w)
    return w[0]! * c[i]! + w[1]! * c[i + 1]! + w[2]! * c[i + 2]! + w[3]! * c[i + 3]!
  }
  return { value: (x: number) => at(x, weights), slope: (x: number) => at(x, weightSlopes) * (count - 1) }
}

const places = Array.from({ length: 101 }, (_, k) => k / 100)

describe('spline', () => {
  it('[limit] a cubic is reproduced exactly, ends included', () => {
    for (const count of [6, 7, 20]) {
      const { value, slope } = curve(count, (x) => 1 - 2 * x + 3 * x ** 2 - 4 * x ** 3)
      for (const x of places) {
        expect(value(x)).toBeCloseTo(1 - 2 * x + 3 * x ** 2 - 4 * x ** 3, 12)
        expect(slope(x)).toBeCloseTo(-2 + 6 * x - 12 * x ** 2, 10)
      }
    }
  })

  it('[property] the error falls with the fourth power of the step', () => {
    const error = (count: number) => {
      const { value } = curve(count, (x) => Math.exp(2 * x))
      return Math.max(...places.map((x) => Math.abs(value(x) - Math.exp(2 * x))))
    }
    expect(error(10) / error(20)).toBeGreaterThan(10)
    expect(error(20) / error(40)).toBeGreaterThan(12)
  })

  it('[property] the weights add up to one and their slopes to nothing', () => {
    for (const t of places) {
      weights(t, w)
      expect(w.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 14)
      weightSlopes(t, w)
      expect(w.reduce((a, b) => a + b, 0)).toBeCloseTo(0, 14)
    }
  })
})
