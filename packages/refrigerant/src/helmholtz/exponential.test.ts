import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { exponential } from './exponential.ts'

describe('exponential', () => {
  it('[property] agrees with the built-in function to 5e-16', () => {
    fc.assert(
      fc.property(fc.double({ min: -690, max: 690, noNaN: true }), (x) => {
        expect(Math.abs(exponential(x) / Math.exp(x) - 1)).toBeLessThan(5e-16)
      }),
      { numRuns: 20_000, seed: 5 },
    )
  })

  it('[limit] zero, the ends of the doubles, infinity and NaN', () => {
    expect(exponential(0)).toBe(1)
    expect(exponential(-0)).toBe(1)
    for (const x of [-1e9, -745, -701, 701, 709, 1e9, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, Number.NaN]) {
      expect(exponential(x)).toBe(Math.exp(x))
    }
  })
})
