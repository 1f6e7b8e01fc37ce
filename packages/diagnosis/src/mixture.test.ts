import { describe, expect, it } from 'vitest'
import { moments, quantile } from './mixture.ts'

describe('a mixture of Gaussians', () => {
  const two = [
    { share: 0.5, mean: -1, variance: 0.01 },
    { share: 0.5, mean: 1, variance: 0.01 },
  ]

  it('[property] has the moments of its parts and of their distance', () => {
    expect(moments(two)).toEqual({ mean: 0, sd: expect.closeTo(Math.sqrt(1.01), 12) })
  })

  it('[property] has its quantiles where its parts lie', () => {
    expect(quantile(two, 0.25)).toBeCloseTo(-1, 6)
    expect(quantile(two, 0.75)).toBeCloseTo(1, 6)
    expect(quantile([{ share: 1, mean: 2, variance: 9 }], 0.95)).toBeCloseTo(2 + 3 * 1.6449, 3)
  })
})
