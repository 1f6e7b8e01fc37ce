import fc from 'fast-check'
import { Matrix } from 'ml-matrix'
import { describe, expect, it } from 'vitest'
import { bicubicSurface, evaluate } from './bicubic-surface.ts'

const [ROWS, COLUMNS] = [7, 6]
const sampled = (f: (x: number, y: number) => number) => {
  const matrix = Matrix.zeros(ROWS, COLUMNS)
  for (let i = 0; i < ROWS; i++)
    for (let j = 0; j < COLUMNS; j++) matrix.set(i, j, f(i / (ROWS - 1), j / (COLUMNS - 1)))
  return matrix
}
const cubic = (x: number, y: number) => 1 + 2 * x - y + 3 * x * y - x * x * x * y * y + 0.5 * y * y * y
const plane = (x: number, y: number) => 5 - x + 4 * y
const surface = bicubicSurface([sampled(cubic), sampled(plane)])
const at = (x: number, y: number) => {
  const out = new Float64Array(2)
  evaluate(surface, x, y, out)
  return out
}
const share = fc.double({ min: 0, max: 1, noNaN: true })

describe('bicubic surface', () => {
  it('[property] is exact for cubics and planes, side by side, everywhere on its grid', () => {
    fc.assert(
      fc.property(share, share, (x, y) => {
        const [first, second] = at(x, y)
        expect(first).toBeCloseTo(cubic(x, y), 9)
        expect(second).toBeCloseTo(plane(x, y), 9)
      }),
      { seed: 1 },
    )
  })

  it('[limit] is held at its edges beyond them', () => {
    expect(at(-3, 0.4)).toEqual(at(0, 0.4))
    expect(at(0.3, 9)).toEqual(at(0.3, 1))
  })
})
