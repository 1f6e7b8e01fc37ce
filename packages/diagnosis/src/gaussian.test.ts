import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { cholesky, dot, lnDeterminant, solved } from './gaussian.ts'

const N = 4
/** B Bᵀ + I is positive definite for any B. */
const positive = fc
  .array(fc.double({ min: -3, max: 3, noNaN: true }), { minLength: N * N, maxLength: N * N })
  .map((b) =>
    Float64Array.from({ length: N * N }, (_, at) => {
      const [i, j] = [Math.floor(at / N), at % N]
      let sum = i === j ? 1 : 0
      for (let k = 0; k < N; k++) sum += b[i * N + k]! * b[j * N + k]!
      return sum
    }),
  )

describe('the triangle of a covariance', () => {
  it('[property] solves what it came from', () => {
    fc.assert(
      fc.property(
        positive,
        fc.array(fc.double({ min: -5, max: 5, noNaN: true }), { minLength: N, maxLength: N }),
        (A, b) => {
          const x = solved(cholesky(A, N)!, Float64Array.from(b))
          for (let i = 0; i < N; i++) expect(dot(A.subarray(i * N, (i + 1) * N), x)).toBeCloseTo(b[i]!, 7)
        },
      ),
      { seed: 1 },
    )
  })

  it('[property] has the determinant of a diagonal', () => {
    expect(lnDeterminant(cholesky(Float64Array.of(4, 0, 0, 9), 2)!, 2)).toBeCloseTo(Math.log(36), 12)
  })

  it('[limit] there is none of a matrix that is no covariance', () => {
    expect(cholesky(Float64Array.of(1, 2, 2, 1), 2)).toBeUndefined()
    expect(cholesky(Float64Array.of(Number.NaN), 1)).toBeUndefined()
  })
})
