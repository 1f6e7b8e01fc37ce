import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { MASS_FLOW, POWER } from '../test/heat-pump-compressor.ts'
import { toKelvin } from './dew-unit.ts'
import { fitRating, type RatingPoint } from './fit-rating.ts'
import { siPerUnit } from './rated-quantity.ts'
import { type RatingPolynomial, ratedValue } from './rating-polynomial.ts'

const F = (t: number) => toKelvin(t, '°F')
const SUCTIONS = [30, 35, 40, 45, 50, 55]
const DISCHARGES = [90, 100, 110, 120, 130, 140]

const value = (polynomial: RatingPolynomial, suctionDew_K: number, dischargeDew_K: number) => {
  const result = ratedValue(polynomial, { suctionDew_K, dischargeDew_K })
  if (!result.ok) throw new Error(`${result.error.field} ${result.error.value}`)
  return result.value.si
}

/** A table of a polynomial, as the maker would print it, each value moved by `error`. */
function table(
  polynomial: RatingPolynomial,
  error: (i: number) => number = () => 0,
  suctions = SUCTIONS,
  discharges = DISCHARGES,
): readonly RatingPoint[] {
  const perUnit = siPerUnit(polynomial.what, polynomial.unit)!
  return suctions.flatMap((s, k) =>
    discharges.map((d, m) => {
      const [suctionDew_K, dischargeDew_K] = [F(s), F(d)]
      return {
        suctionDew_K,
        dischargeDew_K,
        value: value(polynomial, suctionDew_K, dischargeDew_K) / perUnit + error(k * discharges.length + m),
      }
    }),
  )
}

const fitted = (polynomial: RatingPolynomial, points: readonly RatingPoint[]) => {
  const fit = fitRating(polynomial.what, polynomial.unit, polynomial.dewUnit, points)
  if (!fit.ok) throw new Error(`${fit.error.field} ${fit.error.value}`)
  return fit.value
}

describe('a table without noise', () => {
  test.each([
    ['mass flow', MASS_FLOW],
    ['power', POWER],
  ])('[property] %s: the fit predicts as the polynomial behind it, to 1e-9 of the value', (_, polynomial) => {
    const fit = fitted(polynomial, table(polynomial)).polynomial
    const t = (min: number, max: number) => fc.double({ min, max, noNaN: true })
    fc.assert(
      fc.property(t(30, 55), t(90, 140), (s, d) => {
        const [a, b] = [value(fit, F(s), F(d)), value(polynomial, F(s), F(d))]
        expect(Math.abs(a / b - 1)).toBeLessThan(1e-9)
      }),
      { seed: 2, numRuns: 300 },
    )
  })

  test('[property] sixteen points, four by four, are enough, in °C as well', () => {
    const points = table(MASS_FLOW, () => 0, [30, 38, 46, 55], [90, 107, 123, 140])
    const fit = fitRating('mass flow', 'lb/h', '°C', points)
    if (!fit.ok) throw new Error(fit.error.field)
    expect(value(fit.value.polynomial, F(42), F(117)) / value(MASS_FLOW, F(42), F(117))).toBeCloseTo(1, 9)
  })

  test('[property] the coefficients themselves come back', () => {
    const { coefficients } = fitted(POWER, table(POWER)).polynomial
    for (const [i, c] of POWER.coefficients.entries()) expect(coefficients[i]! / c).toBeCloseTo(1, 6)
  })
})

describe('a table read off a curve', () => {
  const wobble = (i: number) => 20 * Math.sin(7 * i)

  test('[property] the residual is the scatter of the reading', () => {
    const { residual } = fitted(POWER, table(POWER, wobble)).polynomial
    // The root mean square of 20 sin is 14.1; ten of thirty-six degrees of freedom leave some play.
    expect(residual).toBeGreaterThan(10)
    expect(residual).toBeLessThan(19)
  })

  test('[property] the point that was misread is named', () => {
    const { worst } = fitted(
      POWER,
      table(POWER, (i) => (i === 14 ? 300 : 0)),
    )
    expect(worst).toMatchObject({ index: 14 })
    expect(worst!.off).toBeCloseTo(300, 3)
  })

  test('[property] ten points leave nothing to judge them by', () => {
    const all = table(MASS_FLOW, () => 0, [30, 38, 46, 55], [90, 107, 123, 140])
    // A triangle of points, 4 + 3 + 2 + 1, determines a cubic exactly.
    const ten = all.filter((_, i) => Math.floor(i / 4) + (i % 4) <= 3)
    const fit = fitted(MASS_FLOW, ten)
    expect(fit.worst).toBeUndefined()
    expect(fit.polynomial.residual).toBeUndefined()
    expect(value(fit.polynomial, F(38), F(107)) / value(MASS_FLOW, F(38), F(107))).toBeCloseTo(1, 9)
  })
})

describe('the range of use', () => {
  test('[property] every point of the table may be asked for', () => {
    const points = table(MASS_FLOW)
    const { polynomial } = fitted(MASS_FLOW, points)
    for (const { suctionDew_K, dischargeDew_K } of points)
      expect(ratedValue(polynomial, { suctionDew_K, dischargeDew_K }).ok).toBe(true)
  })

  test('[limit] a corner that the table cut off is refused, its neighbour is not', () => {
    const cut = table(MASS_FLOW).filter((p) => p.dischargeDew_K - F(90) <= 2 * (p.suctionDew_K - F(30)) + 40 / 1.8)
    const { polynomial } = fitted(MASS_FLOW, cut)
    expect(ratedValue(polynomial, { suctionDew_K: F(30), dischargeDew_K: F(139) })).toMatchObject({
      ok: false,
      error: { kind: 'out-of-range' },
    })
    expect(ratedValue(polynomial, { suctionDew_K: F(54), dischargeDew_K: F(139) }).ok).toBe(true)
  })

  test('[limit] nothing outside the table is answered', () => {
    const { polynomial } = fitted(MASS_FLOW, table(MASS_FLOW))
    const t = (min: number, max: number) => fc.double({ min, max, noNaN: true })
    fc.assert(
      fc.property(t(-50, 120), t(-50, 250), (s, d) => {
        const inside = s >= 30 && s <= 55 && d >= 90 && d <= 140
        return ratedValue(polynomial, { suctionDew_K: F(s), dischargeDew_K: F(d) }).ok === inside
      }),
      { seed: 4, numRuns: 500 },
    )
  })
})

describe('hostile tables', () => {
  const points = table(MASS_FLOW)
  const spoiled = (change: Partial<RatingPoint>) => points.map((p, i) => (i === 3 ? { ...p, ...change } : p))
  test.each([
    ['no points', [], 'rating points'],
    ['nine points', points.slice(0, 9), 'rating points'],
    ['three suction temperatures', points.filter((p) => p.suctionDew_K < F(42)), 'rating points'],
    ['one point many times', Array.from({ length: 20 }, () => points[0]!), 'range of use'],
    [
      'one line of points',
      points.filter((p) => p.suctionDew_K === F(30)).concat(points.filter((p) => p.suctionDew_K === F(30))),
      'range of use',
    ],
    ['a value that is no number', spoiled({ value: Number.NaN }), 'point 4, value'],
    ['a value of nothing', spoiled({ value: 0 }), 'point 4, value'],
    ['a discharge below the suction', spoiled({ dischargeDew_K: F(10) }), 'point 4, discharge dew temperature'],
    ['a temperature that is no number', spoiled({ suctionDew_K: Number.NaN }), 'point 4, suction dew temperature'],
    ['a temperature in the wrong unit', spoiled({ suctionDew_K: 45 }), 'point 4, suction dew temperature'],
  ])('[limit] %s', (_, rows, field) => {
    expect(fitRating('mass flow', 'lb/h', '°F', rows)).toMatchObject({ ok: false, error: { field } })
  })

  test('[limit] a unit of something else', () => {
    expect(fitRating('power', 'lb/h', '°F', points)).toMatchObject({ ok: false, error: { kind: 'unknown' } })
  })
})
