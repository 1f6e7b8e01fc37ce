import { kelvin, pascal } from '@chargewright/quantity'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type Humidity, type MoistAir, moistAir } from './moist-air.ts'

const fahrenheit = (t: number) => kelvin((t + 459.67) / 1.8)
const celsius = (t: number) => kelvin(t + 273.15)
const psia = (p: number) => pascal(p * 6894.757293168)
const SEA_LEVEL = pascal(101_325)

function air(dryBulb: number, humidity: Humidity, pressure: number): MoistAir {
  const result = moistAir(kelvin(dryBulb), humidity, pascal(pressure))
  if (!result.ok) throw new Error(`${result.error.field} ${result.error.value}`)
  return result.value
}

// The handbook's inch-pound enthalpy counts dry air from 0 °F, ours from 0 °C: 32 °F · 0.240 Btu/(lb °F) apart (eq. 28).
const btuPerPound = (state: MoistAir) => state.enthalpy_J_kg / 2326 + 0.24 * 32
// m³ of moist air per kg of dry air, in ft³/lb.
const cubicFeetPerPound = (state: MoistAir) => ((1 + state.humidityRatio) / state.density_kg_m3) * 16.018463
const toFahrenheit = (t: number) => t * 1.8 - 459.67

// ASHRAE Handbook – Fundamentals 2017, ch. 1, as repeated in the inch-pound tests of PsychroLib (commit 3066345d).
// Status READ, digits as repeated there.
describe('handbook example 1: 100 °F dry bulb, 65 °F wet bulb, 14.696 psia', () => {
  const state = air(fahrenheit(100), { wetBulb: fahrenheit(65) }, psia(14.696))

  test('[published] dew point 40 °F, relative humidity 13 %, to the digits printed', () => {
    expect(Math.abs(toFahrenheit(state.dewPoint_K) - 40)).toBeLessThan(0.5)
    expect(Math.abs(state.relativeHumidity - 0.13)).toBeLessThan(0.005)
  })

  test('[published] specific volume 14.22 ft³/lb within one unit of the last digit', () => {
    expect(Math.abs(cubicFeetPerPound(state) - 14.22)).toBeLessThan(0.01)
  })

  // The example takes the saturated humidity at the wet bulb from the real-gas table, 0.5 % above the perfect gas;
  // 35 °F below it, that has grown to 1 % of what is left.
  test('[published] humidity ratio 0.00523 within 1 %, enthalpy 29.80 Btu/lb within 0.07', () => {
    expect(Math.abs(state.humidityRatio / 0.00523 - 1)).toBeLessThan(0.01)
    expect(Math.abs(btuPerPound(state) - 29.8)).toBeLessThan(0.07)
  })
})

describe('handbook table 2, saturated and dry air at 14.696 psia (real gas)', () => {
  test.each([
    [41, 0.005425],
    [77, 0.020173],
    [122, 0.086863],
  ])('[published] %f °F: saturated humidity ratio %f, ours 0.4 %% to 0.65 %% lower', (t, W) => {
    const low = 1 - air(fahrenheit(t), { relativeHumidity: 1 }, psia(14.696)).humidityRatio / W
    expect(low).toBeGreaterThan(0.004)
    expect(low).toBeLessThan(0.0065)
  })

  test.each([
    [41, 1, 15.699, 0.0025],
    [77, 1, 40.576, 0.0025],
    [77, 0, 18.498, 0.0005],
  ])(
    '[published] %f °F, relative humidity %f: enthalpy %f Btu/lb within %f of it',
    (t, relativeHumidity, h, tolerance) => {
      const state = air(fahrenheit(t), { relativeHumidity }, psia(14.696))
      expect(Math.abs(btuPerPound(state) / h - 1)).toBeLessThan(tolerance)
    },
  )

  test('[published] 77 °F: dry air has 13.5251 ft³/lb, ours within 0.04 %', () => {
    const state = air(fahrenheit(77), { relativeHumidity: 0 }, psia(14.696))
    expect(Math.abs(cubicFeetPerPound(state) / 13.5251 - 1)).toBeLessThan(0.0004)
  })
})

describe('handbook table 3, saturation pressure of water', () => {
  // The handbook claims 300 ppm for its equations 5 and 6 (REMEMBERED). The pressure is read from the humidity ratio, eq. 20.
  test.each([
    [-4, 0.014974],
    [23, 0.058268],
    [41, 0.12656],
    [77, 0.45973],
    [122, 1.7914],
  ])('[published] %f °F: %f psia', (t, p) => {
    const { humidityRatio: W, pressure_Pa } = air(fahrenheit(t), { relativeHumidity: 1 }, SEA_LEVEL)
    expect(Math.abs((pressure_Pa * W) / (0.621945 + W) / psia(p) - 1)).toBeLessThan(300e-6)
  })
})

test('[oracle] 86 °F, 77 °F wet bulb, 14.175 psia (1000 ft): humidity ratio 0.018719 in inch-pound constants', () => {
  // The same library in its inch-pound mode. Status READ. The SI constants of eq. 33 are rounded differently: 0.03 %.
  const { humidityRatio } = air(fahrenheit(86), { wetBulb: fahrenheit(77) }, psia(14.175))
  expect(Math.abs(humidityRatio / 0.018719 - 1)).toBeLessThan(0.0004)
})

// Inputs of a usual visit and of the whole range.
const dryBulb = fc.double({ min: 233.15, max: 348.15, noNaN: true })
const fraction = fc.double({ min: 0, max: 1, noNaN: true })
const pressure = fc.double({ min: 50_000, max: 120_000, noNaN: true })

describe('round trips', () => {
  test('[property] relative humidity to dew point and back', () => {
    fc.assert(
      fc.property(dryBulb, fraction, pressure, (t, phi, p) => {
        const there = air(t, { relativeHumidity: phi }, p)
        const back = air(t, { dewPoint: kelvin(there.dewPoint_K) }, p)
        expect(Math.abs(back.humidityRatio - there.humidityRatio)).toBeLessThanOrEqual(1e-4 * there.humidityRatio)
        // The floor of bone-dry air, 10⁻⁷ kg/kg, is 0.15 % relative humidity at −40 °C and 120 kPa.
        expect(Math.abs(back.relativeHumidity - phi)).toBeLessThan(there.humidityRatio > 1e-7 ? 1e-4 : 1.6e-3)
      }),
      { seed: 11, numRuns: 20_000 },
    )
  })

  test('[property] relative humidity to wet bulb and back', () => {
    fc.assert(
      fc.property(dryBulb, fraction, pressure, (t, phi, p) => {
        const there = air(t, { relativeHumidity: phi }, p)
        const back = air(t, { wetBulb: kelvin(there.wetBulb_K) }, p)
        // Water per kelvin of wet bulb: at most a quarter of what saturated air holds (at 75 °C and 50 kPa, 4.2 % more
        // vapour pressure times 4.4 for the air it displaces), and 4.5·10⁻⁴ kg/kg for the heat that evaporates it.
        const perKelvin = 0.25 * air(t, { relativeHumidity: 1 }, p).humidityRatio + 4.5e-4
        expect(Math.abs(back.humidityRatio - there.humidityRatio)).toBeLessThan(0.001 * perKelvin)
      }),
      { seed: 12, numRuns: 20_000 },
    )
  })

  test('[property] wet bulb to dew point and back, within 0.002 K except where ice and water disagree', () => {
    fc.assert(
      fc.property(dryBulb, fraction, pressure, (t, part, p) => {
        const bottom = air(t, { relativeHumidity: 0 }, p).wetBulb_K
        const wetBulb = bottom + part * (t - bottom)
        const there = air(t, { wetBulb: kelvin(wetBulb) }, p)
        const back = air(t, { dewPoint: kelvin(there.dewPoint_K) }, p)
        const twoWetBulbs = Math.abs(wetBulb - 273.15) < 1.1
        expect(Math.abs(back.wetBulb_K - wetBulb)).toBeLessThan(twoWetBulbs ? 1.1 : 0.002)
      }),
      { seed: 13, numRuns: 20_000 },
    )
  })
})

describe('what always holds', () => {
  test('[property] dew point ≤ wet bulb ≤ dry bulb, and saturated air has all three alike', () => {
    fc.assert(
      fc.property(dryBulb, fraction, pressure, (t, phi, p) => {
        const state = air(t, { relativeHumidity: phi }, p)
        expect(state.dewPoint_K).toBeLessThanOrEqual(state.wetBulb_K + 0.001)
        expect(state.wetBulb_K).toBeLessThanOrEqual(t)
        const saturated = air(t, { relativeHumidity: 1 }, p)
        expect(saturated.dewPoint_K).toBeCloseTo(t, 2)
        expect(saturated.wetBulb_K).toBeCloseTo(t, 2)
        expect(air(t, { wetBulb: kelvin(t) }, p).relativeHumidity).toBeCloseTo(1, 9)
      }),
      { seed: 14, numRuns: 5000 },
    )
  })

  test('[property] more water: higher enthalpy and wet bulb, lower density; less pressure: thinner, more water at saturation', () => {
    fc.assert(
      fc.property(dryBulb, fc.double({ min: 0, max: 0.9, noNaN: true }), pressure, (t, phi, p) => {
        const drier = air(t, { relativeHumidity: phi }, p)
        const wetter = air(t, { relativeHumidity: phi + 0.1 }, p)
        expect(wetter.humidityRatio).toBeGreaterThan(drier.humidityRatio)
        expect(wetter.enthalpy_J_kg).toBeGreaterThan(drier.enthalpy_J_kg)
        expect(wetter.density_kg_m3).toBeLessThan(drier.density_kg_m3)
        const higher = air(t, { relativeHumidity: phi + 0.1 }, Math.max(50_000, 0.95 * p))
        if (p > 53_000) {
          expect(higher.density_kg_m3).toBeLessThan(wetter.density_kg_m3)
          expect(higher.humidityRatio).toBeGreaterThan(wetter.humidityRatio)
        }
      }),
      { seed: 15, numRuns: 5000 },
    )
  })

  test('[property] density is that of a mixture of two perfect gases, at any altitude', () => {
    fc.assert(
      fc.property(dryBulb, fraction, pressure, (t, phi, p) => {
        const { humidityRatio: W, density_kg_m3 } = air(t, { relativeHumidity: phi }, p)
        const vapour = (p * W) / (0.621945 + W)
        // R = 8.314462618 J/(mol K) (CODATA 2018); molar masses 28.966 and 18.015268 g/mol (handbook, ch. 1).
        const mixture = ((p - vapour) * 0.028966 + vapour * 0.018015268) / (8.314462618 * t)
        expect(Math.abs(density_kg_m3 / mixture - 1)).toBeLessThan(2e-5)
      }),
      { seed: 16, numRuns: 5000 },
    )
  })

  test('[property] what was given comes back unchanged', () => {
    expect(air(300, { wetBulb: kelvin(292) }, 84_300)).toMatchObject({
      dryBulb_K: 300,
      wetBulb_K: 292,
      pressure_Pa: 84_300,
    })
    expect(air(300, { dewPoint: kelvin(285) }, 84_300).dewPoint_K).toBe(285)
    expect(air(300, { relativeHumidity: 0 }, 84_300).relativeHumidity).toBe(0)
  })
})

describe('limits', () => {
  test('[limit] a wet bulb above the dry bulb is a problem that names both', () => {
    expect(moistAir(celsius(25), { wetBulb: celsius(26) }, SEA_LEVEL)).toEqual({
      ok: false,
      error: {
        kind: 'out-of-range',
        field: 'wet bulb at a dry bulb of 298.15 K',
        value: 299.15,
        min: expect.closeTo(281.42, 2),
        max: 298.15,
        unit: 'K',
      },
    })
  })

  test('[limit] a wet bulb below that of bone-dry air is a problem: no air cools a wick so far', () => {
    expect(moistAir(celsius(25), { wetBulb: celsius(8.2) }, SEA_LEVEL).ok).toBe(false)
    expect(moistAir(celsius(25), { wetBulb: celsius(8.4) }, SEA_LEVEL).ok).toBe(true)
  })

  test('[limit] a dew point above the dry bulb, or below that of bone-dry air, is a problem', () => {
    const field = 'dew point at a dry bulb of 298.15 K'
    for (const t of [25.01, -90]) {
      expect(moistAir(celsius(25), { dewPoint: celsius(t) }, SEA_LEVEL)).toMatchObject({ error: { field, unit: 'K' } })
    }
  })

  test('[limit] a percentage where a fraction is meant is a problem', () => {
    expect(moistAir(celsius(25), { relativeHumidity: 55 }, SEA_LEVEL)).toMatchObject({
      error: { field: 'relative humidity', value: 55, min: 0, max: 1 },
    })
  })

  test('[limit] bone-dry air is its own lowest wet bulb and dew point', () => {
    const dry = air(celsius(25), { relativeHumidity: 0 }, SEA_LEVEL)
    expect(dry.humidityRatio).toBe(1e-7)
    expect(air(celsius(25), { wetBulb: kelvin(dry.wetBulb_K) }, SEA_LEVEL).humidityRatio).toBeLessThan(1e-6)
    expect(air(celsius(25), { dewPoint: kelvin(dry.dewPoint_K) }, SEA_LEVEL).humidityRatio).toBeCloseTo(1e-7, 10)
  })

  test('[limit] below freezing the wick is ice: −10 °C with a wet bulb of −11 °C', () => {
    // Eq. 35 by hand: W* = 0.621945·237.7/(101 325 − 237.7) over ice at −11 °C, W = (2832.64·W* − 1.006)/2834.5.
    const { humidityRatio } = air(celsius(-10), { wetBulb: celsius(-11) }, SEA_LEVEL)
    expect(humidityRatio).toBeCloseTo(0.001107, 5)
  })

  test('[limit] around 0 °C one humidity has two wet bulbs, on water and on ice, and both give it', () => {
    const onWater = air(celsius(5), { wetBulb: celsius(0.2) }, SEA_LEVEL)
    const onIce = air(celsius(5), { wetBulb: celsius(-0.1421) }, SEA_LEVEL)
    expect(onIce.humidityRatio).toBeCloseTo(onWater.humidityRatio, 5)
  })

  test.each([
    ['dry bulb', 233.14, 101_325],
    ['dry bulb', 348.16, 101_325],
    ['air pressure', 300, 49_999],
    ['air pressure', 300, 120_001],
  ])('[limit] %s out of range says so (%f K, %f Pa)', (field, t, p) => {
    expect(moistAir(kelvin(t), { relativeHumidity: 0.5 }, pascal(p))).toMatchObject({ ok: false, error: { field } })
  })

  test('[limit] the corners of the range are air', () => {
    for (const t of [233.15, 348.15]) {
      for (const p of [50_000, 120_000]) {
        for (const phi of [0, 1]) {
          const state = air(t, { relativeHumidity: phi }, p)
          for (const value of Object.values(state)) expect(Number.isFinite(value)).toBe(true)
        }
      }
    }
  })
})

test('[property] any numbers at all give finite air or a problem with its range', () => {
  const kelvins = fc.oneof(fc.double(), fc.double({ min: 150, max: 400 }))
  const humidity = fc.oneof(
    fc.record({ wetBulb: kelvins.map(kelvin) }),
    fc.record({ dewPoint: kelvins.map(kelvin) }),
    fc.record({ relativeHumidity: fc.oneof(fc.double(), fc.double({ min: -0.1, max: 1.1 })) }),
  )
  const pascals = fc.oneof(fc.double(), fc.double({ min: 45_000, max: 125_000 }))
  fc.assert(
    fc.property(kelvins, humidity, pascals, (t, h, p) => {
      const result = moistAir(kelvin(t), h, pascal(p))
      if (result.ok) {
        for (const value of Object.values(result.value)) expect(Number.isFinite(value)).toBe(true)
        expect(result.value.humidityRatio).toBeGreaterThan(0)
        expect(result.value.density_kg_m3).toBeGreaterThan(0)
      } else {
        expect(result.error).toMatchObject({ kind: 'out-of-range', min: expect.any(Number), max: expect.any(Number) })
      }
    }),
    { seed: 17, numRuns: 100_000 },
  )
})
