import { kelvin } from '@chargewright/quantity'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { waterVapourPressure } from './water-vapour-pressure.ts'

const fahrenheit = (t: number) => kelvin((t + 459.67) / 1.8)
const at = (T: number): number => {
  const p = waterVapourPressure(kelvin(T))
  if (!p.ok) throw new Error(p.error.field)
  return p.value
}
const PSI = 6894.757293168
const MICRON = 101_325 / 760_000

describe('against the handbook', () => {
  // ASHRAE Handbook – Fundamentals 2017, ch. 1, table 3, as repeated in the inch-pound tests of PsychroLib (commit
  // 3066345d). READ. The handbook claims 300 ppm for its equations (REMEMBERED).
  test.each([
    [-4, 0.014974],
    [23, 0.058268],
    [41, 0.12656],
    [77, 0.45973],
    [122, 1.7914],
    [212, 14.7094],
  ])('[published] %f °F: %f psia', (t, p) => {
    expect(Math.abs(at(fahrenheit(t)) / PSI / p - 1)).toBeLessThan(300e-6)
  })
})

describe('in the units of a vacuum gauge', () => {
  // COMPUTED from the same equations (coefficients REMEMBERED) in another program, to the digits given.
  test.each([
    [-40, 96.3],
    [-30, 178.0],
    [-20, 319.9],
    [-10, 560.1],
    [0, 956.8],
    [10, 1597.7],
    [20, 2611.0],
    [30, 4181.6],
    [32, 4584.5],
    [35, 5170.3],
    [40, 6294.9],
    [45, 7630.7],
    [50, 9210.7],
    [60, 13256.8],
    [70, 18786.8],
    [72, 20107.8],
    [75, 22241.3],
    [77, 23771.1],
    [80, 26237.8],
    [90, 36142.9],
    [100, 49145.2],
    [110, 66010.8],
    [120, 87643.1],
    [130, 115096.5],
    [212, 760702.5],
  ])('[oracle] %f °F: %f micron', (t, microns) => {
    expect(Math.abs(at(fahrenheit(t)) / MICRON / microns - 1)).toBeLessThan(6e-4)
  })
})

test('[property] warmer water has the higher vapour pressure', () => {
  fc.assert(
    fc.property(fc.double({ min: 173.15, max: 473, noNaN: true }), (T) => at(T + 0.1) > at(T)),
    { seed: 7, numRuns: 500 },
  )
})

test('[property] ice and water meet at the triple point', () => {
  expect(at(273.16) / at(273.16 - 1e-9) - 1).toBeLessThan(1e-7)
})

test.each([100, 500, Number.NaN, Number.POSITIVE_INFINITY])('[limit] refuses %f K', (T) => {
  expect(waterVapourPressure(kelvin(T))).toMatchObject({ ok: false, error: { kind: 'out-of-range' } })
})
