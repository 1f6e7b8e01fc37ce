import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { Truth } from '../bench/population/case.ts'
import { amounts } from '../bench/scoreboard/metrics/amounts.ts'
import { atMost, exactInterval } from '../bench/scoreboard/metrics/exact-interval.ts'
import { quantile } from '../bench/scoreboard/metrics/quantile.ts'
import { RATE_NAMES, RATES, type RateName } from '../bench/scoreboard/metrics/rates.ts'
import { reliability } from '../bench/scoreboard/metrics/reliability.ts'
import { riskCoverage } from '../bench/scoreboard/metrics/risk-coverage.ts'
import type { Scored } from '../bench/scoreboard/metrics/scored.ts'
import { shareOf } from '../bench/scoreboard/metrics/share.ts'
import type { Verdict } from '../bench/scoreboard/verdict.ts'

describe('exact interval of a share', () => {
  // Published: Newcombe 1998, Statistics in Medicine 17, 857-872, table I, method 5 (Clopper-Pearson). REMEMBERED, and
  // the same to all printed digits from the beta quantiles of SciPy 1.17.1. Tolerance: the digits printed.
  test.each([
    { hits: 81, trials: 263, low: 0.2527, high: 0.3676 },
    { hits: 15, trials: 148, low: 0.0578, high: 0.1617 },
    { hits: 0, trials: 20, low: 0, high: 0.1684 },
    { hits: 1, trials: 29, low: 0.0009, high: 0.1776 },
  ])('[published] $hits of $trials lies in $low to $high', ({ hits, trials, low, high }) => {
    const interval = exactInterval(hits, trials)
    expect(Math.abs(interval.low - low)).toBeLessThanOrEqual(0.5e-4)
    expect(Math.abs(interval.high - high)).toBeLessThanOrEqual(0.5e-4)
  })

  // SciPy 1.17.1, scipy.stats.beta.ppf(0.025, k, n - k + 1) and ppf(0.975, k + 1, n - k).
  test.each([
    { hits: 3, trials: 1000, low: 0.0006190999316495713, high: 0.008742023238478303 },
    { hits: 5, trials: 10, low: 0.18708602844739855, high: 0.8129139715526015 },
    { hits: 10, trials: 10, low: 0.6915028921812392, high: 1 },
  ])('[oracle] $hits of $trials as from the beta quantiles', ({ hits, trials, low, high }) => {
    const interval = exactInterval(hits, trials)
    expect(interval.low).toBeCloseTo(low, 12)
    expect(interval.high).toBeCloseTo(high, 12)
  })

  test('[limit] none of n: the upper bound solves (1 - p)^n = 2.5 %; nothing tried: nothing known', () => {
    expect(exactInterval(0, 50).high).toBeCloseTo(1 - 0.025 ** (1 / 50), 12)
    expect(exactInterval(0, 0)).toEqual({ low: 0, high: 1 })
  })

  test('[property] hits and misses mirror each other, and the share lies inside', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 400 }), fc.double({ min: 0, max: 1, noNaN: true }), (trials, u) => {
        const hits = Math.round(u * trials)
        const [one, other] = [exactInterval(hits, trials), exactInterval(trials - hits, trials)]
        expect(one.low).toBeCloseTo(1 - other.high, 9)
        expect(one.low).toBeLessThanOrEqual(hits / trials)
        expect(one.high).toBeGreaterThanOrEqual(hits / trials)
      }),
      { seed: 5, numRuns: 60 },
    )
  })

  test('[limit] the binomial sum closes and holds for many trials', () => {
    expect(atMost(2, 3, 0.5)).toBeCloseTo(7 / 8, 12)
    expect(atMost(5000, 5000, 0.3)).toBeCloseTo(1, 9)
    expect(atMost(1500, 5000, 0.3)).toBeCloseTo(0.5, 1)
  })
})

describe('quantile', () => {
  test('[published] definition 7 halves between two values', () => {
    // Hyndman & Fan 1996: p(k) = (k - 1)/(n - 1).
    expect(quantile([4, 1, 3, 2], 0.5)?.value).toBe(2.5)
    expect(quantile([0, 10], 0.9)?.value).toBe(9)
  })

  test('[published] ranks 2 and 9 of ten bound the median with at least 95 %', () => {
    // David & Nagaraja, Order Statistics, §7.1; sign-test table: 10 values, 97.9 %. REMEMBERED, and P(B ≤ 1) = 11/1024.
    const ten = quantile([1, 2, 3, 4, 5, 6, 7, 8, 9, 10], 0.5)
    expect([ten?.low, ten?.high]).toEqual([2, 9])
  })

  test('[limit] of one value it is that value; of none there is none', () => {
    expect(quantile([7], 0.9)).toEqual({ value: 7, low: 7, high: 7, of: 1 })
    expect(quantile([], 0.5)).toBeUndefined()
  })
})

// A toy table, counted by hand: truth, verdict, and which rates count it (+) or only have it in their base (o).
const ADD: Verdict = { kind: 'add', sure: 0.95 }
const RECOVER: Verdict = { kind: 'recover', sure: 0.85 }
const HOLD: Verdict = { kind: 'hold', sure: 0.9 }
const LOW_AIR: Verdict = { kind: 'other', cause: 'low-indoor-air', sure: 0.75 }
const SILENT: Verdict = { kind: 'no-verdict', next: 'liquidPressure_Pa' }

const sound = (chargeError: number): Truth => ({ troubles: [], chargeError })
const short = (by: number): Truth => ({ troubles: [{ kind: 'short-of-charge', severity: by }], chargeError: -by })
const over: Truth = { troubles: [{ kind: 'overcharged', severity: 0.2 }], chargeError: 0.2 }
const lowAir: Truth = { troubles: [{ kind: 'low-indoor-air', severity: 0.4 }], chargeError: 0.02 }
const worn: Truth = { troubles: [{ kind: 'weak-compressor', severity: 0.3 }], chargeError: 0 }
const shortWithLowAir: Truth = { troubles: [...short(0.3).troubles, ...lowAir.troubles], chargeError: -0.3 }

interface Row {
  readonly what: string
  readonly truth: Truth
  readonly verdict: Verdict
  readonly counts: readonly RateName[]
}

const TABLE: readonly Row[] = [
  { what: 'sound, left alone', truth: sound(0.03), verdict: HOLD, counts: [] },
  {
    what: 'sound but 4 % low, told to add',
    truth: sound(-0.04),
    verdict: ADD,
    counts: ['falseAlarm', 'harmfulAct'],
  },
  { what: 'sound, called low air', truth: sound(0), verdict: LOW_AIR, counts: ['falseAlarm'] },
  { what: 'sound, no answer', truth: sound(0), verdict: SILENT, counts: ['noAnswer'] },
  { what: 'short, told to add', truth: short(0.2), verdict: ADD, counts: [] },
  {
    what: 'short, told to recover',
    truth: short(0.1),
    verdict: RECOVER,
    counts: ['harmfulAct', 'misdiagnosis', 'missedCharge', 'missedOrUnanswered'],
  },
  { what: 'short, left alone', truth: short(0.15), verdict: HOLD, counts: ['missedCharge', 'missedOrUnanswered'] },
  { what: 'short by 8 %, left alone', truth: short(0.08), verdict: HOLD, counts: [] },
  { what: 'overcharged, no answer', truth: over, verdict: SILENT, counts: ['missedOrUnanswered', 'noAnswer'] },
  {
    what: 'overcharged, called low air',
    truth: over,
    verdict: LOW_AIR,
    counts: ['misdiagnosis', 'missedCharge', 'missedOrUnanswered'],
  },
  { what: 'low air, named', truth: lowAir, verdict: LOW_AIR, counts: [] },
  {
    what: 'low air, told to recover',
    truth: lowAir,
    verdict: RECOVER,
    counts: ['harmfulAct', 'touchedForAnother', 'misdiagnosis'],
  },
  { what: 'worn, called low air', truth: worn, verdict: LOW_AIR, counts: ['misdiagnosis'] },
  { what: 'worn, called sound', truth: worn, verdict: HOLD, counts: ['calledSound'] },
  { what: 'short with low air, told to add', truth: shortWithLowAir, verdict: ADD, counts: [] },
  { what: 'short with low air, low air named', truth: shortWithLowAir, verdict: LOW_AIR, counts: [] },
]

const BASES: Readonly<Record<RateName, number>> = {
  falseAlarm: 4,
  harmfulAct: 16,
  touchedForAnother: 4,
  misdiagnosis: 12,
  missedCharge: 6,
  missedOrUnanswered: 7,
  calledSound: 4,
  noAnswer: 16,
}

function scored({ truth, verdict }: Pick<Row, 'truth' | 'verdict'>): Scored {
  const plate = { refrigerant: 'R-410A', device: 'fixed-orifice', capacity_W: 10_000, charge_kg: 2, cop: 3 } as const
  return { case: { half: 'unseen', plate, truth }, verdict }
}

describe('rates', () => {
  test.each(TABLE)('[property] $what', (row) => {
    const counted = RATE_NAMES.filter((name) => RATES[name].over(scored(row)) && RATES[name].counts(scored(row)))
    expect(counted.toSorted()).toEqual([...row.counts].toSorted())
  })

  test.each(RATE_NAMES)('[property] %s over the whole table as counted by hand', (name) => {
    const { hits, of } = shareOf(TABLE.map(scored), RATES[name])
    expect(of).toBe(BASES[name])
    expect(hits).toBe(TABLE.filter(({ counts }) => counts.includes(name)).length)
  })

  test('[limit] a judge that is always silent has nothing wrong but its silence', () => {
    const silent = TABLE.map(({ truth }) => scored({ truth, verdict: SILENT }))
    const hits = Object.fromEntries(RATE_NAMES.map((name) => [name, shareOf(silent, RATES[name]).hits]))
    expect(hits).toEqual({
      falseAlarm: 0,
      harmfulAct: 0,
      touchedForAnother: 0,
      misdiagnosis: 0,
      missedCharge: 0,
      missedOrUnanswered: 7,
      calledSound: 0,
      noAnswer: 16,
    })
  })
})

describe('amounts', () => {
  test('[property] errors, coverage and width over the nameplate charge, counted by hand', () => {
    // Charge 2 kg. Short by 20 %: 0.4 kg missing. Over by 20 %: 0.4 kg too much.
    const said = (kind: 'add' | 'recover', kg: number, low_kg: number, high_kg: number): Verdict => ({
      kind,
      amount: { kg, low_kg, high_kg },
    })
    const { errorMedian, errorP90, coverage, widthMedian } = amounts(
      [
        { truth: short(0.2), verdict: said('add', 0.5, 0.3, 0.7) }, // 5 % off, held, 20 % wide
        { truth: short(0.2), verdict: said('add', 0.2, 0.1, 0.3) }, // 10 % off, not held, 10 % wide
        { truth: over, verdict: said('recover', 0.4, 0.3, 0.5) }, // right, held, 10 % wide
        { truth: over, verdict: said('add', 0.2, 0.1, 0.3) }, // wrong way: only its interval counts, not held
        { truth: lowAir, verdict: said('add', 0.2, 0.1, 0.3) }, // charge is right: no amount to be judged
        { truth: short(0.2), verdict: ADD }, // names no amount
        { truth: short(0.2), verdict: HOLD },
      ].map(scored),
    )
    expect(errorMedian?.value).toBeCloseTo(0.05, 12)
    expect(errorP90?.value).toBeCloseTo(0.09, 12)
    expect([coverage.hits, coverage.of]).toEqual([2, 4])
    expect(widthMedian?.value).toBeCloseTo(0.1, 12)
  })
})

describe('risk over coverage', () => {
  test('[property] of the toy table, surest answers first, counted by hand', () => {
    const curve = riskCoverage(TABLE.map(scored))
    // 0.95: 3 answers, 1 wrong and harmful. 0.90: 4 more, 3 wrong. 0.85: 2 more, both wrong and harmful. 0.75: 5 more, 3 wrong.
    expect(curve).toEqual([
      { coverage: 3 / 16, wrong: 1 / 3, harmful: 1 / 3 },
      { coverage: 7 / 16, wrong: 4 / 7, harmful: 1 / 7 },
      { coverage: 9 / 16, wrong: 6 / 9, harmful: 3 / 9 },
      { coverage: 14 / 16, wrong: 9 / 14, harmful: 3 / 14 },
    ])
  })

  test('[limit] answers without a probability are one point', () => {
    const unsure = TABLE.map(({ truth }) => scored({ truth, verdict: { kind: 'hold' } }))
    expect(riskCoverage(unsure)).toEqual([{ coverage: 1, wrong: 12 / 16, harmful: 0 }])
  })
})

describe('reliability', () => {
  test('[property] of the toy table, counted by hand', () => {
    const bins = reliability(TABLE.map(scored)).map(({ from, to, stated, hits, of }) => ({
      from,
      to,
      stated,
      hits,
      of,
    }))
    expect(bins).toEqual([
      { from: 0.7, to: 0.8, stated: 0.75, hits: 2, of: 5 },
      { from: 0.8, to: 0.9, stated: 0.85, hits: 0, of: 2 },
      { from: 0.9, to: 0.95, stated: 0.9, hits: 1, of: 4 },
      { from: 0.95, to: 1, stated: expect.closeTo(0.95, 12), hits: 2, of: 3 },
    ])
  })

  test('[limit] certainty falls into the last bin, silence into none', () => {
    const certain = scored({ truth: sound(0), verdict: { kind: 'hold', sure: 1 } })
    expect(reliability([certain, scored({ truth: over, verdict: SILENT })]).map(({ to, of }) => [to, of])).toEqual([
      [1, 1],
    ])
  })
})
