import { atmosphericPressure, quantity } from '@chargewright/quantity'
import { describe, expect, test } from 'vitest'
import { type AirStream, airStream } from './air-stream.ts'

const fahrenheit = (t: number, u?: number) => quantity('temperature', (t + 459.67) / 1.8, u)
const PSIA = 6894.757293168
const DRY = { relativeHumidity: 0 }

function streamAt(
  temperature: ReturnType<typeof fahrenheit>,
  pressure_Pa: number,
  humidity?: typeof DRY,
  u?: number,
): AirStream {
  const stream = airStream(temperature, quantity('absolute pressure', pressure_Pa, u), humidity)
  if (!stream.ok) throw new Error(stream.error.field)
  return stream.value
}

// ASHRAE Handbook – Fundamentals 2017, ch. 1, table 1, as repeated in the inch-pound tests of PsychroLib (commit
// 3066345d): pressure READ. At one temperature densities go as pressures; the handbook's formula and its
// table differ by up to 0.002 psi, and the table is rounded to 0.0005.
describe('density at altitude, by the handbook’s table of pressures', () => {
  test.each([
    [-1000, 15.236],
    [1000, 14.175],
    [3000, 13.173],
    [10_000, 10.108],
  ])('[published] %d ft: %f psia', (feet, psia) => {
    const pressure = atmosphericPressure(quantity('elevation', feet * 0.3048))
    if (!pressure.ok) throw new Error(pressure.error.field)
    const ratio =
      streamAt(fahrenheit(70), pressure.value.si, DRY).air.density_kg_m3 /
      streamAt(fahrenheit(70), 101_325, DRY).air.density_kg_m3
    expect(Math.abs(ratio - psia / 14.696)).toBeLessThan(0.0025 / 14.696)
  })

  // COMPUTED from p = 14.696 (1 − 6.8754e-6 Z)^5.2559, to the digits given.
  test.each([
    [-1000, 1.0367],
    [0, 1.0],
    [1000, 0.9644],
    [2000, 0.9298],
    [3000, 0.8962],
    [4000, 0.8637],
    [5000, 0.8321],
    [6000, 0.8014],
    [7000, 0.7716],
    [8000, 0.7428],
    [10000, 0.6877],
  ])('[oracle] %d ft: %f of the density at sea level', (feet, ratio) => {
    const pressure = atmosphericPressure(quantity('elevation', feet * 0.3048))
    if (!pressure.ok) throw new Error(pressure.error.field)
    const at = streamAt(fahrenheit(70), pressure.value.si, DRY).air.density_kg_m3
    expect(Math.abs(at / streamAt(fahrenheit(70), 101_325, DRY).air.density_kg_m3 - ratio)).toBeLessThan(0.0001)
  })
})

test('[published] standard air, dry at 70 °F and 14.696 psia, has 0.075 lb/ft³ (REMEMBERED, two digits)', () => {
  const { density_kg_m3 } = streamAt(fahrenheit(70), 14.696 * PSIA, DRY).air
  expect(Math.abs((density_kg_m3 * 0.3048 ** 3) / 0.45359237 - 0.075)).toBeLessThan(0.0005)
})

describe('uncertainty of the density', () => {
  test('[property] 1 K and 1 % of pressure add in quadrature', () => {
    const { uDensity } = streamAt(fahrenheit(70, 1), 101_325, DRY, 1013)
    expect(uDensity).toBeCloseTo(Math.hypot(1 / 294.26, 0.01), 4)
  })

  test('[property] humidity that was not read costs 0.3 % to 0.4 % at 77 °F', () => {
    const { uDensity } = streamAt(fahrenheit(77), 101_325)
    expect(uDensity).toBeGreaterThan(0.003)
    expect(uDensity).toBeLessThan(0.004)
  })
})

test.each([
  ['no temperature', Number.NaN, 101_325],
  ['a furnace', 400, 101_325],
  ['no pressure', 295, Number.NaN],
  ['a mountain nobody cools', 295, 40_000],
])('[limit] refuses %s', (_, T, p) => {
  expect(airStream(quantity('temperature', T), quantity('absolute pressure', p)).ok).toBe(false)
})
