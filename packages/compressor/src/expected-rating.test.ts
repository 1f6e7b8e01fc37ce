import { METRIC, quantity, render } from '@chargewright/quantity'
import { describe, expect, test } from 'vitest'
import { COMPRESSOR, POWER } from '../test/heat-pump-compressor.ts'
import { toKelvin } from './dew-unit.ts'
import { type Expected, expectedRating, type Operating } from './expected-rating.ts'
import { judgeRating, type RatingSide } from './judge-rating.ts'
import { motorDraw } from './motor-draw.ts'
import { preferredExpectation } from './preferred-expectation.ts'
import type { RatedQuantity } from './rated-quantity.ts'
import { type SuctionGas, superheatCorrection } from './superheat-correction.ts'
import type { SystemCurve } from './system-curve.ts'

const F = (t: number, u?: number) => quantity('temperature', toKelvin(t, '°F'), u)
const GAS: SuctionGas = { specificVolume_m3_kg: 0.0275, isentropicRise_J_kg: 38_000, refrigeratingEffect_J_kg: 160_000 }
const WARMER: SuctionGas = {
  specificVolume_m3_kg: 0.0289,
  isentropicRise_J_kg: 40_000,
  refrigeratingEffect_J_kg: 171_000,
}
const FOUND: Operating = {
  suctionDew: F(45, 0.3),
  dischargeDew: F(115, 0.3),
  gas: { kind: 'as-rated' },
  voltage: quantity('voltage', 230, 1),
}

const expected = (what: RatedQuantity, change: Partial<Operating> = {}): Expected => {
  const result = expectedRating(COMPRESSOR, what, { ...FOUND, ...change })
  if (!result.ok) throw new Error(`${result.error.field} ${result.error.value}`)
  return result.value
}

describe('as rated', () => {
  test('[oracle] power is the polynomial, 2489.99 W at 45/115 °F (COMPUTED in another program)', () => {
    expect(expected('power').rating.si).toBeCloseTo(2489.9899, 3)
  })

  test('[property] the dew temperatures carry their uncertainty along the slopes of the polynomial', () => {
    const { u } = expected('power').rating
    const at = (s: number, d: number) => expected('power', { suctionDew: F(s), dischargeDew: F(d) }).rating.si
    const bySuction = ((at(46, 115) - at(44, 115)) / 2) * 1.8 * 0.3
    const byDischarge = ((at(45, 116) - at(45, 114)) / 2) * 1.8 * 0.3
    const byVoltmeter = (2490 * 1) / 230
    expect(Math.abs(u / Math.hypot(bySuction, byDischarge, byVoltmeter) - 1)).toBeLessThan(0.01)
  })

  test('[property] a table read off a curve adds its scatter', () => {
    const rough = { ...COMPRESSOR, ratings: [{ ...POWER, residual: 60 }] }
    const result = expectedRating(rough, 'power', FOUND)
    expect(result.ok && Math.sqrt(result.value.rating.u ** 2 - expected('power').rating.u ** 2)).toBeCloseTo(60, 6)
  })
})

describe('return gas other than rated', () => {
  // Dabiri & Rice 1981 as an open heat-pump model cites it (READ): 1 + 0.75 (v_map/v_act − 1), and the work of
  // compression along with it. Worked by hand for the two gases above.
  const flow = 1 + 0.75 * (0.0275 / 0.0289 - 1)
  test('[published] the flow falls by three quarters of what the volume rises, the power follows flow and work', () => {
    const by = superheatCorrection(GAS, WARMER)
    if (!by.ok) throw new Error(by.error.field)
    expect(by.value.flow).toBeCloseTo(flow, 12)
    expect(by.value.power).toBeCloseTo((flow * 40) / 38, 12)
    expect(by.value.capacity).toBeCloseTo((flow * 171) / 160, 12)
  })

  test.each(['mass flow', 'power'] as const)('[property] the expected %s has the factor', (what) => {
    const gas = { kind: 'measured', rated: GAS, actual: WARMER } as const
    const factor = expected(what, { gas }).rating.si / expected(what).rating.si
    expect(factor).toBeCloseTo(what === 'power' ? (flow * 40) / 38 : flow, 9)
  })

  test('[limit] the same gas corrects nothing and adds no uncertainty', () => {
    expect(superheatCorrection(GAS, GAS)).toMatchObject({ ok: true, value: { flow: 1, power: 1, capacity: 1, u: 0 } })
  })

  test.each([
    ['a volume of nothing', { specificVolume_m3_kg: 0 }],
    ['a volume twice as large and more', { specificVolume_m3_kg: 0.06 }],
    ['no number', { isentropicRise_J_kg: Number.NaN }],
    ['a negative effect', { refrigeratingEffect_J_kg: -1 }],
  ])('[limit] refuses %s', (_, change) => {
    expect(superheatCorrection(GAS, { ...WARMER, ...change }).ok).toBe(false)
  })
})

describe('voltage other than rated', () => {
  // Kundur 1994, table 7.1, central air conditioner, single phase: power factor 0.96, P ∝ V^0.202, Q ∝ V^2.3; three
  // phases 0.90, 0.088, 2.5. REMEMBERED; worked by hand.
  test.each([
    [1, 0.9, Math.hypot(0.96 * 0.9 ** 0.202, 0.28 * 0.9 ** 2.3) / 0.9],
    [3, 1.1, Math.hypot(0.9 * 1.1 ** 0.088, Math.sqrt(0.19) * 1.1 ** 2.5) / 1.1],
  ] as const)('[published] %d phases at %f of rated', (phases, voltage, current) => {
    const draw = motorDraw(phases, voltage, 1)
    expect(draw.ok && draw.value.current).toBeCloseTo(current, 9)
  })

  test('[property] at 10 % less a single-phase compressor draws 5 % to 11 % more, less than in proportion', () => {
    const more = expected('current', { voltage: quantity('voltage', 207) }).rating.si / expected('current').rating.si
    expect(more).toBeGreaterThan(1.05)
    expect(more).toBeLessThan(1 / 0.9)
  })

  test('[property] mass flow does not hang on the voltage', () => {
    expect(expected('mass flow', { voltage: quantity('voltage', 215) })).toEqual(expected('mass flow'))
  })

  test('[property] without a voltage the amps are less certain, and say why', () => {
    const { voltage: _, ...unread } = FOUND
    const result = expectedRating(COMPRESSOR, 'current', unread)
    if (!result.ok) throw new Error(result.error.field)
    expect(result.value.rating.u).toBeGreaterThan(2 * expected('current').rating.u)
    expect(result.value.evidence.from.map((e) => render(e.statement, METRIC)).join('|')).toContain('voltage not read')
  })

  test.each([0.89, 1.11, Number.NaN])('[limit] %f of rated is refused', (share) => {
    const result = expectedRating(COMPRESSOR, 'current', { ...FOUND, voltage: quantity('voltage', 230 * share) })
    expect(result).toMatchObject({ ok: false, error: { field: 'measured over rated voltage' } })
  })
})

describe('the judgement', () => {
  const amps = expected('current')
  const judged = (share: number, u = 0.1) => {
    const result = judgeRating(amps, { what: 'current', si: amps.rating.si * share, u })
    if (!result.ok) throw new Error(result.error.field)
    return result.value
  }

  test.each<[number, RatingSide]>([
    [0.8, 'below'],
    [0.92, 'below'],
    [0.95, 'too-close'],
    [0.98, 'inside'],
    [1.02, 'inside'],
    [1.05, 'too-close'],
    [1.08, 'above'],
    [1.3, 'above'],
  ])('[property] %f of the expected amps are %s', (share, side) => {
    expect(judged(share).side).toBe(side)
  })

  test('[property] a meter that is worse makes clear cases too close', () => {
    expect(judged(0.92, 1).side).toBe('too-close')
  })

  test('[property] few amps point at vapour leaking back, many at voltage first', () => {
    expect(
      judged(0.8)
        .suggests.map((s) => render(s, METRIC))
        .join('|'),
    ).toContain('Vapour leaks back')
    expect(render(judged(1.3).suggests[0]!, METRIC)).toContain('voltage')
  })

  test('[property] the sentence has both values and opens down to the polynomial', () => {
    const { evidence } = judged(0.8)
    expect(render(evidence.statement, METRIC)).toMatch(
      /Measured current \d+\.\d ± 0\.2 A is more than 5 % below the expected/,
    )
    expect(evidence.from[0]!.from[0]!.source).toContain('AHRI Standard 540')
  })

  test.each([
    ['another quantity', { what: 'power', si: 2500, u: 10 }],
    ['nothing', { what: 'current', si: 0, u: 0 }],
    ['no number', { what: 'current', si: Number.NaN, u: 0 }],
    ['an uncertainty that is no number', { what: 'current', si: 11, u: Number.NaN }],
  ] as const)('[limit] refuses %s', (_, measured) => {
    expect(judgeRating(amps, measured).ok).toBe(false)
  })
})

describe('the curve of the whole system', () => {
  const curve: SystemCurve = {
    what: 'power',
    outdoor_K: [300, 310],
    box_K: [275, 280],
    values: [
      [2000, 2100],
      [2400, 2500],
    ],
  }
  const air = { outdoor: quantity('temperature', 305, 0.5), box: quantity('temperature', 277.5, 0.5) }
  const preferred = (curves: readonly SystemCurve[], where = air) =>
    preferredExpectation('power', {
      system: { curves, ...where },
      compressor: { compressor: COMPRESSOR, operating: FOUND },
    })

  test('[property] goes before the compressor, on the plane between its entries', () => {
    const result = preferred([curve])
    expect(result.ok && result.value.rating.si).toBeCloseTo(2250, 9)
    expect(result.ok && result.value.rating.u).toBeCloseTo(Math.hypot(40 * 0.5, 20 * 0.5), 9)
  })

  test('[property] is left aside where it is of another quantity', () => {
    expect(preferred([{ ...curve, what: 'capacity' }])).toEqual({ ok: true, value: expected('power') })
  })

  test('[limit] with neither curve there is nothing to expect', () => {
    expect(preferredExpectation('power', {})).toMatchObject({ ok: false, error: { kind: 'missing' } })
  })

  test('[property] gives its own entries back', () => {
    const corner = { outdoor: quantity('temperature', 310), box: quantity('temperature', 280) }
    const result = preferred([curve], corner)
    expect(result.ok && result.value.rating.si).toBe(2500)
  })

  test.each([
    ['a colder day than it knows', curve, { ...air, outdoor: quantity('temperature', 299) }],
    ['a box that is no number', curve, { ...air, box: quantity('temperature', Number.NaN) }],
    ['a grid with a hole', { ...curve, values: [[2000], [2400, 2500]] }, air],
    ['temperatures that fall', { ...curve, outdoor_K: [310, 300] }, air],
    ['a single row', { ...curve, outdoor_K: [300], values: [[2000, 2100]] }, air],
    [
      'a value of nothing',
      {
        ...curve,
        values: [
          [0, 2100],
          [2400, 2500],
        ],
      },
      air,
    ],
  ] as const)('[limit] refuses %s', (_, grid, where) => {
    expect(preferred([grid], where).ok).toBe(false)
  })
})

test('[limit] a quantity without a rating, and a capacity without its effect, are said to be missing', () => {
  expect(expectedRating(COMPRESSOR, 'capacity', FOUND)).toMatchObject({ ok: false, error: { kind: 'missing' } })
  const capacity = { ...POWER, what: 'capacity', unit: 'W' } as const
  const { refrigeratingEffect_J_kg: _, ...bare } = WARMER
  const gas = { kind: 'measured', rated: GAS, actual: bare } as const
  expect(expectedRating({ ...COMPRESSOR, ratings: [capacity] }, 'capacity', { ...FOUND, gas })).toMatchObject({
    ok: false,
    error: { kind: 'missing', field: 'refrigerating effect' },
  })
})

test('[limit] a dew temperature whose uncertainty is no number is refused', () => {
  expect(expectedRating(COMPRESSOR, 'power', { ...FOUND, suctionDew: F(45, Number.NaN) })).toMatchObject({ ok: false })
})
