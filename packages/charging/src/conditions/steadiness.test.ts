import { METRIC, render } from '@chargewright/quantity'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type Channel, steadiness, steadyValue } from './steadiness.ts'

/** A sample every ten seconds for ten minutes. */
const TIMES = Array.from({ length: 61 }, (_, i) => 10 * i)

const channel = (what: Channel['what'], dimension: Channel['dimension'], si: (time_s: number) => number): Channel => ({
  what,
  dimension,
  samples: TIMES.map((time_s) => ({ time_s, si: si(time_s) })),
})
const line = (si: (time_s: number) => number) => channel('suction-temperature', 'temperature', si)
const STILL = line(() => 285)

describe('settled', () => {
  test('[property] all channels that hold still for five minutes are settled, whatever went before', () => {
    const ramp = line((t) => (t < 290 ? 270 + t / 10 : 299))
    expect(steadiness([STILL, ramp])).toMatchObject({ kind: 'settled' })
    expect(render(steadiness([STILL, ramp]).sentence, METRIC)).toBe('All 2 readings have held still for 5 min')
  })

  test('[property] one channel that drifts is enough: superheat and subcooling may hold while the room does not', () => {
    const room = channel('return-air-dry-bulb', 'temperature', (t) => 297 + 0.01 * t)
    const found = steadiness([STILL, room])
    expect(found.kind).toBe('not-settled')
    expect(render(found.sentence, METRIC)).toBe('Return air, dry bulb still moves')
    expect(found.channels.map(({ kind }) => kind)).toEqual(['settled', 'not-settled'])
  })

  test('[published] a steady drift of d across the window has the deviation d/√12', () => {
    // Variance of a uniform distribution, JCGM 100:2008, 4.3.7: a²/3 with half-width a. READ.
    const fine = Array.from({ length: 30_001 }, (_, i) => ({ time_s: i / 100, si: 285 + i / 30_000 }))
    const [found] = steadiness([{ what: 'suction-temperature', dimension: 'temperature', samples: fine }]).channels
    expect(found!.deviation).toBeCloseTo(1 / Math.sqrt(12), 4)
    expect(found!.kind).toBe('settled')
  })

  test('[property] a wet bulb is held tighter than a line, and a pressure by its absolute value', () => {
    const swing = (middle: number, by: number) => (t: number) => middle + by * Math.sin(t / 20)
    const wetBulb = channel('return-air-wet-bulb', 'temperature', swing(292, 0.35))
    expect(steadiness([wetBulb]).kind).toBe('not-settled')
    expect(steadiness([line(swing(292, 0.35))]).kind).toBe('settled')
    const gauge = channel('suction-pressure', 'gauge pressure', swing(0, 1200))
    const absolute = channel('suction-pressure', 'absolute pressure', swing(101_325, 1200))
    expect([gauge, absolute].map((one) => steadiness([one]).kind)).toEqual(['settled', 'settled'])
    const more = channel('suction-pressure', 'gauge pressure', swing(0, 1800))
    expect(steadiness([more]).kind).toBe('not-settled')
  })

  test('[property] the answer at a moment hears nothing of what came after it', () => {
    fc.assert(
      fc.property(fc.integer({ min: 300, max: 590 }), fc.double({ min: -50, max: 50, noNaN: true }), (at, jump) => {
        const later = line((t) => (t <= at ? 285 : 285 + jump))
        expect(steadiness([later], at).kind).toBe('settled')
      }),
      { seed: 7 },
    )
  })
})

describe('where it cannot be told', () => {
  test('[limit] a watch that is too short, has a gap at its end, or too few samples', () => {
    const short = { ...STILL, samples: STILL.samples.slice(0, 20) }
    const stopped = { ...STILL, samples: STILL.samples.slice(0, 40) }
    const few = { ...STILL, samples: STILL.samples.filter((_, i) => i % 15 === 0) }
    expect(steadiness([short]).kind).toBe('too-short')
    expect(steadiness([STILL, stopped]).channels.map(({ kind }) => kind)).toEqual(['settled', 'too-short'])
    expect(steadiness([few]).kind).toBe('too-short')
    expect(render(steadiness([short]).sentence, METRIC)).toBe('Watched for less than 5 min so far')
  })

  test('[limit] nothing measured is not settled', () => {
    expect(steadiness([])).toMatchObject({ kind: 'too-short', channels: [] })
    expect(steadiness([{ ...STILL, samples: [] }])).toMatchObject({ kind: 'too-short' })
  })

  test('[limit] a sample that is no number is left out', () => {
    expect(steadiness([line((t) => (t === 500 ? Number.NaN : 285))]).kind).toBe('settled')
  })
})

test('[property] the value taken is the mean of the last minute', () => {
  expect(steadyValue(line((t) => (t > 540 ? 290 : 250)))!.si).toBeCloseTo(290, 9)
  expect(steadyValue({ ...STILL, samples: [] })).toBeUndefined()
})
