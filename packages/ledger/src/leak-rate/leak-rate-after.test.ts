import { quantity } from '@chargewright/quantity'
import { describe, expect, test } from 'vitest'
import { cylinder, kg } from '../../test/any-book.ts'
import { balanceBook, type CylinderBook } from '../cylinder/balance-book.ts'
import { type Addition, additionsToSystem } from './addition.ts'
import { US_40_CFR_82_157 } from './laws/us-40-cfr-82-157.ts'
import { US_40_CFR_84_106 } from './laws/us-40-cfr-84-106.ts'
import { type LeakHistory, leakRateAfter } from './leak-rate-after.ts'
import { isSeasonalVariance } from './seasonal-variance.ts'

const pounds = (lb: number) => quantity('mass', lb * 0.45359237)
const added = (on: string, lb: number, rest: Partial<Addition> = {}): Addition => ({ on, mass: pounds(lb), ...rest })
const history = (on: string, additions: readonly Addition[], rest: Partial<LeakHistory> = {}): LeakHistory => ({
  fullCharge: pounds(60),
  additions,
  on,
  ...rest,
})
const annualized = (asked: LeakHistory, law = US_40_CFR_82_157) => leakRateAfter(asked, 'annualizing', law)
const rolling = (asked: LeakHistory, law = US_40_CFR_82_157) => leakRateAfter(asked, 'rolling', law)
const percent = (rate: ReturnType<typeof leakRateAfter>) => (rate.ok ? rate.value.percent : Number.NaN)

describe('annualizing', () => {
  test('[property] the days run from the last addition before, in whatever order they are listed', () => {
    const additions = [added('2024-05-01', 5), added('2023-06-01', 40), added('2024-01-02', 3)]
    expect(percent(annualized(history('2024-05-01', additions)))).toBeCloseTo(25.34722222222222, 9)
  })

  test('[property] an installation charge is no leak, but it is the last day on which refrigerant was added', () => {
    const additions = [added('2024-01-02', 60, { exempt: 'installation' }), added('2024-05-01', 5)]
    expect(percent(annualized(history('2024-05-01', additions)))).toBeCloseTo(25.34722222222222, 9)
    expect(annualized(history('2024-01-02', additions)).ok).toBe(false)
  })

  test('[property] additions for the same leak are one, and count from the addition before the first of them', () => {
    const leak = { leak: 'flare at receiver' }
    const additions = [added('2024-01-02', 9), added('2024-04-01', 2, leak), added('2024-05-01', 3, leak)]
    expect(percent(annualized(history('2024-05-01', additions)))).toBeCloseTo(25.34722222222222, 9)
  })

  test('[limit] without an earlier addition: 365 days where the law says so, else it is asked for', () => {
    const first = history('2026-05-01', [added('2026-05-01', 6)])
    const asked = annualized(first)
    expect(!asked.ok && asked.error).toMatchObject({ kind: 'missing', field: 'additions' })
    expect(percent(annualized(first, US_40_CFR_84_106))).toBeCloseTo(10, 9)
    const old = history('2026-05-01', [added('2026-04-01', 6, { exempt: 'retrofit' }), added('2026-05-01', 6)])
    expect(percent(annualized(old, US_40_CFR_84_106))).toBeCloseTo(10, 9)
  })
})

describe('rolling', () => {
  test('[property] the additions of the last 365 days count, the date a year ago among them', () => {
    const additions = [added('2023-03-01', 4), added('2023-03-02', 5), added('2024-01-10', 4), added('2024-03-01', 6)]
    // 2024 is a leap year: 365 days before 1 March lies 2 March.
    expect(percent(rolling(history('2024-03-01', additions)))).toBeCloseTo(25, 9)
  })

  test('[property] after a passed follow-up test only what went in since counts', () => {
    const additions = [added('2024-01-10', 10), added('2024-02-01', 4), added('2024-03-01', 6)]
    const since = (followUpPassedOn: string) => rolling(history('2024-03-01', additions, { followUpPassedOn }))
    expect(percent(since('2024-01-15'))).toBeCloseTo(100 / 6, 9)
    expect(percent(since('2024-02-01'))).toBeCloseTo(10, 9)
    expect(percent(since('2024-03-01'))).toBeCloseTo(100 / 3, 9)
  })

  test('[limit] a first rate under the newer law sums from its first day on', () => {
    const additions = [added('2025-12-20', 20), added('2026-02-01', 6), added('2026-03-01', 3)]
    expect(percent(rolling(history('2026-02-01', additions), US_40_CFR_84_106))).toBeCloseTo(10, 9)
    expect(percent(rolling(history('2026-03-01', additions), US_40_CFR_84_106))).toBeCloseTo((100 * 29) / 60, 9)
  })
})

describe('hostile histories', () => {
  test('[limit] nothing added that day, days that are none and negative weights are problems', () => {
    expect(annualized(history('2024-05-02', [added('2024-05-01', 5)])).ok).toBe(false)
    expect(annualized(history('soon', [added('2024-05-01', 5)]))).toMatchObject({ error: { field: 'on' } })
    const bad = [added('2024-05-01', 5), added('2024-02-30', 5)]
    expect(rolling(history('2024-05-01', bad))).toMatchObject({ error: { field: 'additions[1].on' } })
    const negative = [added('2024-05-01', -5)]
    expect(rolling(history('2024-05-01', negative))).toMatchObject({ error: { field: 'additions[0].mass' } })
    const test_ = history('2024-05-01', [added('2024-05-01', 5)], { followUpPassedOn: '' })
    expect(rolling(test_)).toMatchObject({ error: { field: 'followUpPassedOn' } })
  })
})

describe('additions from the cylinder book', () => {
  const book = (
    ...moves: readonly (readonly [at: string, visit: string | undefined, into: boolean, mass: number])[]
  ): CylinderBook => ({
    cylinders: [cylinder('A'), cylinder('R', { holds: 'recovered', firstWeighing: kg(8) })],
    entries: moves.map(([at, visit, into, mass], i) => ({
      kind: 'moved',
      movement: {
        id: `m${i}`,
        at,
        cylinder: into ? 'A' : 'R',
        refrigerant: 'R-410A',
        direction: into ? 'from-cylinder' : 'to-cylinder',
        counterpart: { kind: 'system', system: 'shop' },
        weighing: { kind: 'difference', mass: kg(mass) },
        ...(visit === undefined ? {} : { visit }),
      },
    })),
  })
  const masses = (one: CylinderBook, system = 'shop') =>
    additionsToSystem(balanceBook(one), system).map(({ on, mass }) => [on, Number(mass.si.toFixed(9))])

  test('[property] what was recovered in the same visit or on the same day is no addition; what came on top is', () => {
    const day = '2026-02-03T09:00:00Z'
    const next = '2026-02-04T09:00:00Z'
    expect(masses(book([day, 'v1', false, 3], [next, 'v1', true, 4.5]))).toEqual([[next, 1.5]])
    expect(masses(book([day, undefined, false, 3], [day, undefined, true, 4.5]))).toEqual([[day, 1.5]])
    expect(masses(book([day, 'v1', false, 3], [next, 'v2', true, 4.5]))).toEqual([[next, 4.5]])
    expect(masses(book([day, 'v1', true, 3]), 'house')).toEqual([])
  })
})

describe('seasonal variance', () => {
  const change = (on: string, lb: number) => ({ on, mass: pounds(lb) })

  // 40 CFR 82.152, READ: at most what was removed in the season before, both within one 12-month period.
  test('[published] putting back no more than was taken out, within twelve months', () => {
    expect(isSeasonalVariance(change('2025-10-01', 20), change('2026-04-01', 20))).toEqual({ ok: true, value: true })
    expect(isSeasonalVariance(change('2025-10-01', 20), change('2026-04-01', 20.1))).toEqual({ ok: true, value: false })
    expect(isSeasonalVariance(change('2025-10-01', 20), change('2026-10-02', 5))).toEqual({ ok: true, value: false })
    expect(isSeasonalVariance(change('2026-04-01', 20), change('2025-10-01', 5))).toEqual({ ok: true, value: false })
  })

  test('[limit] a day that is none is a problem', () => {
    expect(isSeasonalVariance(change('', 20), change('2026-04-01', 20)).ok).toBe(false)
    expect(isSeasonalVariance(change('2026-04-01', 20), change('x', 20)).ok).toBe(false)
  })
})
