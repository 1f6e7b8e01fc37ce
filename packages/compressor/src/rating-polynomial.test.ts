import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { MASS_FLOW, POWER } from '../test/heat-pump-compressor.ts'
import { fromKelvin, toKelvin } from './dew-unit.ts'
import { type RatingPolynomial, ratedValue } from './rating-polynomial.ts'

const F = (t: number) => toKelvin(t, '°F')
const LB_PER_HOUR = 0.45359237 / 3600
const at = (polynomial: RatingPolynomial, s: number, d: number) => {
  const value = ratedValue(polynomial, { suctionDew_K: F(s), dischargeDew_K: F(d) })
  if (!value.ok) throw new Error(value.error.field)
  return value.value
}

// COMPUTED from the published coefficients in another program, to four decimals: they hold term order and units, they
// are no published ratings.
describe('the published coefficients, evaluated elsewhere', () => {
  test.each([
    [30, 90, 364.7312, 1801.9667],
    [30, 100, 359.93, 2070.7646],
    [30, 110, 353.4348, 2381.1623],
    [30, 115, 349.4005, 2556.6486],
    [30, 120, 344.7608, 2748.1598],
    [30, 130, 333.4232, 3186.7572],
    [30, 140, 318.9372, 3711.9544],
    [40, 90, 440.8883, 1773.4132],
    [40, 100, 436.947, 2039.2273],
    [40, 110, 431.6697, 2340.0013],
    [40, 115, 428.3785, 2508.1857],
    [40, 120, 424.5716, 2690.7351],
    [40, 130, 415.1679, 3106.4287],
    [40, 140, 402.9738, 3602.0822],
    [45, 90, 482.5464, 1760.7283],
    [45, 100, 478.992, 2026.8281],
    [45, 110, 474.2807, 2324.5677],
    [45, 115, 471.3397, 2489.9899],
    [45, 120, 467.9276, 2668.9471],
    [45, 130, 459.4479, 3074.9664],
    [45, 140, 448.3567, 3557.6255],
    [50, 90, 526.6699, 1749.3297],
    [50, 100, 523.4739, 2016.9001],
    [50, 110, 519.2999, 2312.7904],
    [50, 115, 516.6946, 2476.0429],
    [50, 120, 513.6631, 2652.0005],
    [50, 130, 506.0787, 3049.5304],
    [50, 140, 496.0619, 3520.3801],
    [55, 90, 573.318, 1739.3862],
    [55, 100, 570.4517, 2009.6122],
    [55, 110, 566.7864, 2304.8381],
    [55, 115, 564.5026, 2466.5135],
    [55, 120, 561.8373, 2640.0638],
    [55, 130, 555.1195, 3030.2893],
    [55, 140, 546.1484, 3490.5147],
  ])('[oracle] suction %d °F, discharge %d °F: %f lb/h and %f W', (s, d, flow, power) => {
    expect(at(MASS_FLOW, s, d).si / LB_PER_HOUR).toBeCloseTo(flow, 3)
    expect(at(POWER, s, d).si).toBeCloseTo(power, 3)
  })
})

test('[property] the slopes are those of the value', () => {
  const t = (min: number, max: number) => fc.double({ min, max, noNaN: true })
  fc.assert(
    fc.property(t(31, 54), t(91, 139), (s, d) => {
      const h = 1e-3
      const slope = (ds: number, dd: number) =>
        ((at(POWER, s + ds, d + dd).si - at(POWER, s - ds, d - dd).si) / (2 * h)) * 1.8
      expect(at(POWER, s, d).perSuctionKelvin).toBeCloseTo(slope(h, 0), 4)
      expect(at(POWER, s, d).perDischargeKelvin).toBeCloseTo(slope(0, h), 4)
    }),
    { seed: 1, numRuns: 200 },
  )
})

test('[property] both unit systems agree: the same cubic in °C and kg/h', () => {
  // X(S, D) with S = 1.8 s + 32: a polynomial that is linear and quadratic in one of them is converted by hand.
  const inF: RatingPolynomial = { ...MASS_FLOW, coefficients: [100, 2, -0.5, 0, 0, 0.01, 0, 0, 0, 0] }
  const c = [
    100 + 2 * 32 - 0.5 * 32 + 0.01 * 32 ** 2,
    2 * 1.8,
    -0.5 * 1.8 + 0.01 * 2 * 32 * 1.8,
    0,
    0,
    0.01 * 1.8 ** 2,
    0,
    0,
    0,
    0,
  ]
  const inC: RatingPolynomial = { ...inF, dewUnit: '°C', unit: 'kg/h', coefficients: c.map((x) => x * 0.45359237) }
  for (const [s, d] of [
    [30, 90],
    [45, 130],
    [55, 140],
  ] as const) {
    expect(at(inC, s, d).si / at(inF, s, d).si).toBeCloseTo(1, 12)
    expect(at(inC, s, d).perDischargeKelvin / at(inF, s, d).perDischargeKelvin).toBeCloseTo(1, 10)
  }
})

test('[property] a temperature in kelvin and back is itself', () => {
  for (const unit of ['°F', '°C'] as const) expect(fromKelvin(toKelvin(45, unit), unit)).toBeCloseTo(45, 9)
})

describe('what is refused', () => {
  test.each([
    [29, 100, 'suction dew temperature'],
    [56, 100, 'suction dew temperature'],
    [45, 141, 'discharge dew temperature'],
    [45, 89, 'discharge dew temperature'],
    [Number.NaN, 100, 'suction dew temperature'],
    [45, Number.NaN, 'discharge dew temperature'],
  ])('[limit] suction %f °F, discharge %f °F', (s, d, field) => {
    const value = ratedValue(MASS_FLOW, { suctionDew_K: F(s), dischargeDew_K: F(d) })
    expect(value).toMatchObject({ ok: false, error: { kind: 'out-of-range' } })
    expect(!value.ok && value.error.field.startsWith(field)).toBe(true)
  })

  test.each([
    ['a slip in a sign', { coefficients: MASS_FLOW.coefficients.map((c) => -c) }, 'unsolved'],
    ['a coefficient that is missing', { coefficients: MASS_FLOW.coefficients.slice(0, 9) }, 'unsolved'],
    ['a unit of something else', { unit: 'A' }, 'unknown'],
    ['a unit that is a word of the language', { unit: 'constructor' }, 'unknown'],
  ])('[limit] %s', (_, change, kind) => {
    const value = ratedValue({ ...MASS_FLOW, ...change }, { suctionDew_K: F(45), dischargeDew_K: F(130) })
    expect(value).toMatchObject({ ok: false, error: { kind } })
  })
})
