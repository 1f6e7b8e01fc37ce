import { describe, expect, it } from 'vitest'
import { cubicCurves, interpolate, placeIn } from './cubic-curves.ts'

const [FIRST, LAST, NODES] = [2, 5, 31]
const sampled = (f: (x: number) => number) =>
  Float64Array.from({ length: NODES }, (_, i) => f(FIRST + ((LAST - FIRST) * i) / (NODES - 1)))
const curves = cubicCurves(FIRST, LAST, [sampled(Math.sin), sampled((x) => 3 * x - 1)])
const at = (quantity: number, x: number) => interpolate(curves, quantity, placeIn(curves, x))

describe('cubic curves', () => {
  it('[property] pass through their nodes, are close between them, and keep their quantities apart', () => {
    for (let x = 2.5; x <= 4.5; x += 0.05) {
      expect(at(0, x)).toBeCloseTo(Math.sin(x), 6)
      expect(at(1, x)).toBeCloseTo(3 * x - 1, 12)
    }
    for (let i = 0; i < NODES; i++) expect(at(0, FIRST + 0.1 * i)).toBeCloseTo(Math.sin(FIRST + 0.1 * i), 12)
  })

  it('[limit] go on in straight lines past both ends, without a step in value or slope', () => {
    for (const [end, out] of [
      [FIRST, -1],
      [LAST, 1],
    ] as const) {
      const slope = (at(0, end + 1e-6) - at(0, end - 1e-6)) / 2e-6
      expect(at(0, end + out * 4)).toBeCloseTo(at(0, end) + slope * out * 4, 4)
      expect(at(1, end + out * 4)).toBeCloseTo(3 * (end + out * 4) - 1, 9)
    }
  })
})
