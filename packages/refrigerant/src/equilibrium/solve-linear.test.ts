import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { solveLinear } from './solve-linear.ts'

describe('solveLinear', () => {
  it('[property] the solution satisfies the equations, pivots wherever they are', () => {
    const entry = fc.double({ min: -1, max: 1, noNaN: true })
    fc.assert(
      fc.property(fc.array(entry, { minLength: 30, maxLength: 30 }), fc.boolean(), (numbers, zeroCorner) => {
        const A = Float64Array.from(numbers.slice(0, 25))
        // Diagonally heavy, so that it is never singular, with the rows turned so that every pivot has to be found.
        for (let i = 0; i < 5; i++) A[i * 5 + ((i + 2) % 5)]! += 6
        if (zeroCorner) A[0] = 0
        const b = Float64Array.from(numbers.slice(25))
        const x = b.slice()
        expect(solveLinear(A.slice(), x, 5, 5)).toBe(true)
        for (let i = 0; i < 5; i++) {
          const sum = x.reduce((total, value, j) => total + A[i * 5 + j]! * value, 0)
          expect(sum).toBeCloseTo(b[i]!, 12)
        }
      }),
      { seed: 6 },
    )
  })

  it('[limit] a singular matrix is told', () => {
    expect(solveLinear(Float64Array.of(1, 2, 2, 4), Float64Array.of(1, 1), 2, 2)).toBe(false)
    expect(solveLinear(Float64Array.of(Number.NaN), Float64Array.of(1), 1, 1)).toBe(false)
  })
})
