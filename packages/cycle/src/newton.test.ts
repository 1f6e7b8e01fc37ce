import { describe, expect, it } from 'vitest'
import { newton, type Vector3 } from './newton.ts'
import { rootBetween } from './root.ts'

const CAP: Vector3 = [1, 1, 1]

describe("Newton's method in three unknowns", () => {
  it('[property] finds the crossing of a sphere, a plane and a curve, quadratically', () => {
    const f = ([x, y, z]: Vector3): Vector3 => [x * x + y * y + z * z - 3, x - y, Math.exp(z - 1) - x]
    const { x, converged, iterations } = newton(f, [1.6, 0.5, 0.7], CAP)
    expect(converged).toBe(true)
    expect(iterations).toBeLessThan(9)
    for (const value of x) expect(value).toBeCloseTo(1, 8)
  })

  it('[limit] says so where there is no root, the slopes are singular, or a value is not a number', () => {
    expect(newton(([x, y, z]) => [x * x + 1, y, z], [1, 1, 1], CAP).converged).toBe(false)
    expect(newton(([x]) => [x - 1, x - 1, x - 1], [0, 0, 0], CAP).converged).toBe(false)
    expect(newton(() => [Number.NaN, 0, 0], [0, 0, 0], CAP).converged).toBe(false)
  })
})

describe('a root between two places', () => {
  it('[property] is found for a steep and for a flat function', () => {
    expect(rootBetween((x) => Math.exp(x) - 5, -3, 9, 1e-12)).toBeCloseTo(Math.log(5), 9)
    expect(rootBetween((x) => (x - 0.3) ** 3, 0, 1, 1e-12)).toBeCloseTo(0.3, 3)
  })

  it('[limit] is none where both ends have the same sign or a value is not a number', () => {
    expect(rootBetween((x) => x * x + 1, -1, 1, 1e-9)).toBeUndefined()
    expect(rootBetween(() => Number.NaN, -1, 1, 1e-9)).toBeUndefined()
  })
})
