import { findRefrigerant } from '@chargewright/refrigerant'
import { describe, expect, test } from 'vitest'
import { described, ORIFICE, readings, visitOf } from '../../test/visit-of.ts'
import { measure } from '../measures/measures.ts'
import { type SuperheatTarget, superheatTarget } from './superheat-target.ts'

const F = 5 / 9

/** Of a system whose capacity nobody knows, so that no model of it can be made. */
const { nominalCapacity: _, ...UNSIZED } = ORIFICE

function target(outdoor: string, wetBulb: string, chart?: typeof ORIFICE.makersChart, of = UNSIZED): SuperheatTarget {
  const facts = chart ? { ...of, makersChart: chart } : of
  const visit = visitOf(
    described(facts),
    readings({ 'condenser-entering-air': outdoor, 'return-air-wet-bulb': wetBulb, 'return-air-dry-bulb': '75 °F' }),
  )
  const refrigerant = findRefrigerant('R-410A')
  if (!refrigerant.ok) throw new Error('R-410A is computed')
  const found = superheatTarget(visit, measure(visit, refrigerant.value).measures)
  if (!found.ok) throw new Error(JSON.stringify(found.error))
  return found.value
}

const inF = (found: SuperheatTarget) => (found.kind === 'target' ? found.measure.quantity.si / F : undefined)

describe('the rule of thumb', () => {
  // COMPUTED from the formula as the trade writes it, (3·WB − 80 − DB)/2 °F; beside it the published grid, REMEMBERED,
  // which it is not meant to reproduce: the difference is stated where the two are compared.
  test.each([
    [75, 63, 17.0, 16.7],
    [80, 60, 10.0, 8.7],
    [80, 67, 20.5, 20.0],
    [85, 63, 12.0, 10.3],
    [95, 64, 8.5, 5.6],
    [95, 67, 13.0, 12.0],
    [95, 72, 20.5, 21.6],
    [105, 72, 15.5, 17.4],
    [115, 76, 16.5, 22.9],
  ])('[published] outdoor %d °F, wet bulb %d °F: %d °F', (outdoor, wetBulb, rule_F) => {
    expect(inF(target(`${outdoor} °F`, `${wetBulb} °F`))).toBeCloseTo(rule_F, 6)
  })

  // REMEMBERED grid of RA3.2 at its spot points. Over all cells of 75 to 105 °F and 60 to 72 °F the departure is 1.1 °F
  // rms; over these ten it is 1.2.
  test('[published] departs from the recalled grid by 1.2 °F rms at ten spot points', () => {
    const spots = [
      [75, 63, 16.7],
      [80, 60, 8.7],
      [80, 67, 20.0],
      [85, 63, 10.3],
      [85, 67, 17.3],
      [95, 67, 12.0],
      [95, 72, 21.6],
      [100, 67, 9.3],
      [105, 67, 6.7],
      [105, 72, 17.4],
    ] as const
    const squares = spots.map(([DB, WB, grid]) => (inF(target(`${DB} °F`, `${WB} °F`))! - grid) ** 2)
    expect(Math.sqrt(squares.reduce((a, b) => a + b) / squares.length)).toBeCloseTo(1.2, 1)
  })

  test('[property] falls as it gets hotter outdoors and rises with the wet bulb', () => {
    const at = (outdoor: number, wetBulb: number) => inF(target(`${outdoor} °F`, `${wetBulb} °F`))!
    for (const wetBulb of [58, 63, 70]) expect(at(85, wetBulb)).toBeGreaterThan(at(95, wetBulb))
    for (const outdoor of [70, 85, 100]) expect(at(outdoor, 68)).toBeGreaterThan(at(outdoor, 66))
  })

  test('[property] its uncertainty is that of both readings, at 1.5 and 0.5 °F per °F', () => {
    const found = target('95 °F', '67 °F')
    const u = (1.4 / Math.sqrt(6)) * F
    expect(found.kind === 'target' && found.measure.quantity.u).toBeCloseTo(Math.hypot(1.5 * u, 0.5 * u), 9)
  })
})

describe('the model of the system', () => {
  const modelled = (outdoor: string, wetBulb: string) => target(outdoor, wetBulb, undefined, ORIFICE)

  test('[property] goes before the rule, and says that it is one', () => {
    const found = modelled('95 °F', '67 °F')
    expect(found).toMatchObject({ kind: 'target', source: 'twin' })
    expect(found.kind === 'target' && found.measure.evidence.source).toContain('estimated by model')
  })

  // REMEMBERED grid of RA3.2; the model is not made from it at these points.
  test.each([
    [95, 67, 12.0],
    [85, 67, 17.3],
    [95, 72, 21.6],
    [105, 72, 17.4],
  ])(
    '[published] outdoor %d °F, wet bulb %d °F: the recalled grid says %d °F, the model is within 5 °F',
    (DB, WB, grid) => {
      expect(Math.abs(inF(modelled(`${DB} °F`, `${WB} °F`))! - grid)).toBeLessThan(5)
    },
  )

  test('[property] falls as it gets hotter outdoors and rises with the wet bulb, and is uncertain as the weather is', () => {
    expect(inF(modelled('85 °F', '67 °F'))).toBeGreaterThan(inF(modelled('95 °F', '67 °F'))!)
    expect(inF(modelled('95 °F', '70 °F'))).toBeGreaterThan(inF(modelled('95 °F', '67 °F'))!)
    const found = modelled('95 °F', '67 °F')
    expect(found.kind === 'target' && found.measure.quantity.u! / F).toBeGreaterThan(0.3)
  })

  test('[limit] has no target where the system would flood or have too little superheat to test', () => {
    expect(modelled('110 °F', '60 °F')).toMatchObject({
      kind: 'none',
      source: expect.stringContaining('estimated by model'),
    })
  })
})

const WET = {
  form: 'csv',
  indoor: 'wet-bulb',
  unit: '°F',
  csv: ',63,67,71\n85,12,18,24\n95,,12,20\n105,-,6,15',
} as const
const DRY_C = { form: 'csv', indoor: 'dry-bulb', unit: '°C', csv: ';20;24;28\n30;4;8;12\n40;2;5;9' } as const

describe("the maker's chart", () => {
  test('[property] goes before the rule, bilinear between its points', () => {
    expect(inF(target('90 °F', '69 °F', WET))).toBeCloseTo((18 + 24 + 12 + 20) / 4, 9)
  })

  test('[property] of the dry-bulb family in °C reads the dry bulb', () => {
    // 35 °C outdoors, 75 °F (23.89 °C) return dry bulb.
    const share = (75 - 32) / 1.8 / 4 - 5
    const expected_K = (4 + share * 4 + 2 + share * 3) / 2
    expect(inF(target('35 °C', '67 °F', DRY_C))).toBeCloseTo(expected_K / F, 9)
  })

  test.each([
    ['an empty cell', '100 °F', '64 °F', 'gives no value'],
    ['hotter than it covers', '106 °F', '67 °F', 'covers'],
    ['drier than it covers', '95 °F', '60 °F', 'covers'],
  ])('[limit] %s: none, and the rule does not fill in', (_, outdoor, wetBulb, words) => {
    const found = target(outdoor, wetBulb, WET)
    expect(found.kind === 'none' && found.because.template).toContain(words)
  })
})
