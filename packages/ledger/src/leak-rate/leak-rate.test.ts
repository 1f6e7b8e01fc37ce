import { quantity } from '@chargewright/quantity'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { chronicLeak } from './chronic-leak.ts'
import { judgeLeakRate } from './judge-leak-rate.ts'
import { US_40_CFR_82_157 } from './laws/us-40-cfr-82-157.ts'
import { annualizedLeakRate, type LeakRate, rollingLeakRate } from './leak-rate.ts'

const pounds = (lb: number) => quantity('mass', lb * 0.45359237)
const percentOf = (rate: ReturnType<typeof annualizedLeakRate>) => (rate.ok ? rate.value.percent : Number.NaN)

describe('leak rate', () => {
  // 40 CFR 82.152 prints the formulas (READ) but no example. COMPUTED by hand: 5 lb of 60 lb in 120 days is
  // (5/60)/(120/365); in 400 days the year counts, 5/60; 12 lb of 100 lb in 73 days, a fifth of the year, is 60 %.
  test.each([
    [5, 60, 120, 25.34722222222222],
    [5, 60, 400, 8.333333333333332],
    [12, 100, 73, 60],
  ])('[published] annualizing: %s lb of %s lb in %s days is %s %%', (added, full, days, percent) => {
    expect(percentOf(annualizedLeakRate(pounds(added), pounds(full), days))).toBeCloseTo(percent, 9)
  })

  test('[published] rolling: 5, 4 and 6 lb of 100 lb in 365 days is 15 %', () => {
    expect(percentOf(rollingLeakRate(pounds(5 + 4 + 6), pounds(100), 365))).toBeCloseTo(15, 9)
  })

  test('[published] chronic: 125 lb of 100 lb in a calendar year, at the figure of 125 %', () => {
    const additions = [
      { on: '2025-12-31', mass: pounds(90) },
      { on: '2026-01-01', mass: pounds(60) },
      { on: '2026-12-31', mass: pounds(65) },
    ]
    const year = (full: number) => chronicLeak({ additions, fullCharge: pounds(full) }, 2026, US_40_CFR_82_157)
    expect(year(100)).toMatchObject({ ok: true, value: { chronic: true, reportBy: '2027-03-01', confirmed: true } })
    expect(year(100.1)).toMatchObject({ ok: true, value: { chronic: false } })
  })

  test('[property] both methods agree over a full year; a shorter time makes the annualized rate higher', () => {
    const mass = fc.double({ min: 0, max: 500, noNaN: true })
    fc.assert(
      fc.property(mass, mass, fc.integer({ min: 1, max: 364 }), (added, full, days) => {
        fc.pre(full > 0.01)
        const year = percentOf(annualizedLeakRate(pounds(added), pounds(full), 365))
        expect(year).toBeCloseTo(percentOf(rollingLeakRate(pounds(added), pounds(full), 365)), 9)
        expect(percentOf(annualizedLeakRate(pounds(added), pounds(full), days))).toBeGreaterThanOrEqual(year)
        expect(percentOf(annualizedLeakRate(pounds(added), pounds(full), days + 365))).toBeCloseTo(year, 9)
      }),
      { seed: 82, numRuns: 500 },
    )
  })

  test('[property] the uncertainties of both weights go into the rate, relative to each and in quadrature', () => {
    const rate = annualizedLeakRate(quantity('mass', 3, 0.03), quantity('mass', 50, 1), 365)
    expect(rate.ok && rate.value.u_percent).toBeCloseTo(6 * Math.hypot(0.01, 0.02), 12)
  })

  test('[limit] no full charge, no days, no weight: each is refused by its name', () => {
    const refused = (rate: ReturnType<typeof annualizedLeakRate>) => (rate.ok ? undefined : rate.error.field)
    for (const bad of [-1, Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(refused(annualizedLeakRate(pounds(bad), pounds(60), 10))).toBe('refrigerant added')
      expect(refused(annualizedLeakRate(pounds(1), pounds(bad), 10))).toBe('full charge')
      expect(refused(annualizedLeakRate(pounds(1), pounds(60), bad))).toBe('days since the last addition')
      expect(refused(annualizedLeakRate(quantity('mass', 1, bad), pounds(60), 9))).toBe(
        'refrigerant added, uncertainty',
      )
    }
    expect(refused(annualizedLeakRate(pounds(1), pounds(60), 0))).toBe('days since the last addition')
    expect(refused(rollingLeakRate(pounds(1), pounds(60), 366))).toBe('period')
    expect(percentOf(annualizedLeakRate(pounds(0), pounds(60), 1))).toBe(0)
  })
})

describe('threshold', () => {
  const rate = (percent: number): LeakRate => ({
    method: 'rolling',
    percent,
    u_percent: 0,
    added: pounds(1),
    period_days: 365,
  })

  // 40 CFR 82.157(c)(2), READ: over the rate, not at it.
  test.each([
    ['commercial-refrigeration', 20],
    ['industrial-process', 30],
    ['comfort-cooling', 10],
    ['other', 10],
  ] as const)('[published] %s: over %s %%, not at it', (use, threshold) => {
    expect(judgeLeakRate(rate(threshold), US_40_CFR_82_157, use)).toMatchObject({ over: false, confirmed: true })
    expect(judgeLeakRate(rate(threshold + 1e-9), US_40_CFR_82_157, use).over).toBe(true)
  })
})
