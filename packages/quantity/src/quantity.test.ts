import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { add, inQuadrature, quantity, subtract } from './quantity.ts'

describe('points and differences', () => {
  test('[property] two temperatures differ by a temperature difference: 50 °F − 40 °F is 5.56 K of superheat', () => {
    const superheat = subtract(quantity('temperature', 283.15), quantity('temperature', 277.5944444))
    expect(superheat.dimension).toBe('temperature difference')
    expect(superheat.si).toBeCloseTo(10 / 1.8, 6)
  })

  test('[property] 40 °F and 10 °F of superheat are 50 °F', () => {
    const suction = add(quantity('temperature', 277.5944444), quantity('temperature difference', 10 / 1.8))
    expect(suction.dimension).toBe('temperature')
    expect(suction.si).toBeCloseTo(283.15, 6)
  })

  test('[property] two gauge or two absolute pressures differ by a pressure difference, two masses by a mass', () => {
    const gauge = subtract(quantity('gauge pressure', 5e5), quantity('gauge pressure', 4e5))
    const absolute = subtract(quantity('absolute pressure', 5e5), quantity('absolute pressure', 4e5))
    expect([gauge, absolute]).toEqual(Array(2).fill({ dimension: 'pressure difference', si: 1e5 }))
    expect(subtract(quantity('mass', 3), quantity('mass', 1))).toEqual({ dimension: 'mass', si: 2 })
  })

  test('[property] the compiler refuses what has no meaning', () => {
    const point = quantity('temperature', 300)
    const gauge = quantity('gauge pressure', 5e5)
    const absolute = quantity('absolute pressure', 6e5)
    // @ts-expect-error two points of temperature have no sum
    add(point, point)
    // @ts-expect-error a gauge reading is not an absolute pressure
    subtract<'absolute pressure'>(absolute, gauge)
    // @ts-expect-error a superheat is not a temperature
    const wrong: typeof point = subtract(point, point)
    expect(wrong.dimension).not.toBe(point.dimension)
  })

  test('[property] what is taken away and added again is back', () => {
    const kelvins = fc.double({ min: 200, max: 450, noNaN: true })
    fc.assert(
      fc.property(kelvins, kelvins, (a, b) => {
        const A = quantity('temperature', a)
        const B = quantity('temperature', b)
        expect(add(B, subtract(A, B)).si).toBeCloseTo(a, 9)
      }),
      { seed: 10 },
    )
  })
})

describe('uncertainty', () => {
  test('[property] of a sum and of a difference is the root of the sum of squares', () => {
    const a = quantity('temperature', 280, 0.3)
    const b = quantity('temperature', 275, 0.4)
    expect(subtract(a, b).u).toBeCloseTo(0.5, 12)
    expect(add(a, subtract(a, b)).u).toBeCloseTo(Math.hypot(0.3, 0.5), 12)
  })

  test('[limit] of two exact values is absent, of one exact value that of the other', () => {
    const exact = quantity('mass', 2)
    expect(subtract(exact, exact)).not.toHaveProperty('u')
    expect(add(exact, quantity('mass', 1, 0.1)).u).toBe(0.1)
    expect(inQuadrature()).toBeUndefined()
    expect(inQuadrature(undefined, 0)).toBe(0)
  })
})
