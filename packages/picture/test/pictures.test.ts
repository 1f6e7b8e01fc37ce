import { INCH_POUND, METRIC, type UnitPreference } from '@chargewright/quantity'
import { findRefrigerant, refrigerantNames } from '@chargewright/refrigerant'
import type { Fact } from '@chargewright/visit'
import { describe, expect, test } from 'vitest'
import { EXAMPLES, type Example, example, exampleWith, visitOf } from '../../../examples/example-visits.ts'
import {
  chargeSteps,
  chargingChart,
  convergenceChart,
  DESK,
  findingMark,
  PAGE,
  PHONE,
  type Picture,
  PRINT,
  plateOfVisit,
  pressureEnthalpyPlate,
  type Sheet,
  stepsChart,
  subcoolingChart,
} from '../src/index.ts'
import { textsOf, unclosed } from './drawn.ts'

const PRINTED: Sheet = { width: 230, height: 150, text: 7.2, palette: PRINT }
/** Every size, every palette; a palette moves nothing, so it is drawn in one size. */
const SHEETS = [DESK, { ...PHONE, palette: PAGE }, PRINTED]
const DRAWINGS = { chargingChart, subcoolingChart, stepsChart, convergenceChart, plateOfVisit }

function all({ visit, assessment }: Example, preference: UnitPreference, sheet: Sheet): readonly Picture[] {
  return Object.values(DRAWINGS).flatMap((drawing) => drawing(visit, assessment, preference, sheet) ?? [])
}

/** Whole, readable, and nothing of it cut off. */
function expectSound({ svg, title, description, table }: Picture, { width, height, text }: Sheet) {
  expect(unclosed(svg)).toEqual([])
  expect(svg).not.toMatch(/NaN|undefined|Infinity/)
  expect(svg).toContain(`viewBox="0 0 ${width} ${height}"`)
  expect(svg).toMatch(/<title>[^<]+<\/title><desc>[^<]+<\/desc>/)
  expect(title.length).toBeGreaterThan(5)
  expect(description.length).toBeGreaterThan(20)
  for (const row of table.rows) expect(row).toHaveLength(table.head.length)
  for (const { words, left, right, baseline } of textsOf(svg)) {
    expect([words, left >= -0.02]).toEqual([words, true])
    expect([words, right <= width + 0.02]).toEqual([words, true])
    expect([words, baseline >= 0.7 * text && baseline <= height - 0.2 * text]).toEqual([words, true])
  }
}

describe('every picture of every example', () => {
  test.each(EXAMPLES.map((each) => [each.name, each] as const))('[property] %s is sound on every sheet', (_, each) => {
    for (const preference of [INCH_POUND, METRIC]) {
      for (const sheet of SHEETS) {
        for (const picture of all(each, preference, sheet)) expectSound(picture, sheet)
      }
    }
  })
})

test('[property] the method decides which chart there is', () => {
  for (const { visit, assessment } of EXAMPLES) {
    const { method, target, measures } = assessment
    const charted = chargingChart(visit, assessment, METRIC) !== undefined
    expect(charted).toBe(method?.id === 'superheat' && target !== undefined && measures.superheat !== undefined)
    const subcooled = subcoolingChart(visit, assessment, METRIC) !== undefined
    expect(subcooled).toBe(method?.id === 'subcooling' && target !== undefined && measures.subcooling !== undefined)
    expect(stepsChart(visit, assessment, METRIC) !== undefined).toBe(visit.moves.length > 0)
  }
})

test('[property] the same visit gives the same drawing', () => {
  const each = example('orifice-add')
  expect(all(each, INCH_POUND, DESK)).toEqual(all(each, INCH_POUND, DESK))
})

test('[property] a chart says what was found, what it should be, and what lies between', () => {
  const { visit, assessment } = example('orifice-recover')
  const { svg, description } = chargingChart(visit, assessment, INCH_POUND)!
  const words = textsOf(svg).map((text) => text.words)
  expect(words).toEqual(
    expect.arrayContaining(['superheat, °F', '67° wet bulb', '4.6 ± 1.6 °F', '7.8 °F below target']),
  )
  expect(description).toMatch(/target 12\.\d ± \d\.\d °F, with a band of 5\.0 °F to either side/)
  expect(description).toContain('estimated by model')
})

test('[limit] where the method may not speak, nothing is said to be above or below its target', () => {
  for (const name of ['orifice-cold-outdoors', 'orifice-no-valid-test', 'orifice-low-airflow']) {
    const { visit, assessment } = example(name)
    // Without a target there is no chart at all.
    const svg = chargingChart(visit, assessment, INCH_POUND)?.svg ?? ''
    expect([name, /(above|below) target/.test(svg)]).toEqual([name, false])
  }
})

test('[property] the subcooling field shows nameplate and valve, and says when no superheat was read', () => {
  const { visit, assessment } = example('valve-subcooling-add')
  const words = textsOf(subcoolingChart(visit, assessment, METRIC)!.svg).map((text) => text.words)
  expect(words).toEqual(expect.arrayContaining(['valve superheat, K', 'target 5.6 K', '5.1 K below target']))
  const suctionless = { ...assessment, measures: { subcooling: assessment.measures.subcooling! } }
  expect(subcoolingChart(visit, suctionless, METRIC)!.svg).toContain('superheat not read')
})

test('[property] the plate numbers the stations and carries both readings as levels', () => {
  const more: readonly Fact[] = [
    { kind: 'reading', what: 'discharge-temperature', value: '172 °F' },
    { kind: 'reading', what: 'evaporator-outlet-temperature', value: '52 °F' },
    { kind: 'reading', what: 'compressor-current', value: '11.9 A' },
  ]
  const { visit, assessment } = exampleWith('orifice-add', ...more)
  const { svg, table } = plateOfVisit(visit, assessment, INCH_POUND)!
  const words = textsOf(svg).map((text) => text.words)
  for (const number of ['1', '2', '3', '5']) expect(words).toContain(number)
  expect(words).toContain('110.0 psig, dew 36.2 °F')
  expect(words).toContain('342.0 psig, bubble 105.0 °F')
  expect(words).toContain('6 · 11.9 A')
  expect(table.rows.map(([station]) => station)).toEqual([
    '1 Evaporator',
    '2 Suction, at compressor',
    '3 Discharge',
    '5 Liquid line',
  ])
})

test('[property] there is a plate of every refrigerant that can be computed, also without a cycle', () => {
  for (const name of refrigerantNames()) {
    const refrigerant = findRefrigerant(name)
    if (!refrigerant.ok) throw new Error(name)
    const picture = pressureEnthalpyPlate(refrigerant.value, { points: [], beside: {} }, METRIC, DESK)
    expect([name, picture !== undefined]).toEqual([name, true])
    expectSound(picture!, DESK)
  }
})

describe('steps', () => {
  test('[property] net masses add up, and the last measure is the finding’s own', () => {
    const { visit, assessment } = example('step-by-step')
    const steps = chargeSteps(visit, assessment)
    const OZ = 0.45359237 / 16
    expect(steps.map(({ net }) => net.si / OZ)).toEqual([0, 5, 11].map((oz) => expect.closeTo(oz, 9)))
    expect(steps[0]!.measure!.si).toBeGreaterThan(steps[1]!.measure!.si)
    expect(steps[2]!.measure).toEqual(assessment.measures.superheat!.quantity)
  })

  test('[limit] a great many steps are drawn as the last of them, on top of what went before', () => {
    const move: Fact = {
      kind: 'refrigerant-moved',
      direction: 'into-system',
      mass: '1 oz',
      phase: 'vapour',
      port: 'suction',
      compressor: 'running',
    }
    const each = exampleWith('orifice-add', ...Array.from({ length: 200 }, () => move))
    const steps = chargeSteps(each.visit, each.assessment)
    expect(steps.length).toBeLessThanOrEqual(25)
    expect(steps.at(-1)!.net.si).toBeCloseTo(200 * 0.028349523125, 9)
    expectSound(stepsChart(each.visit, each.assessment, METRIC, PHONE)!, PHONE)
  })
})

describe('closing on the charge', () => {
  test('[property] the last stretch is the finding’s own, and one weighed step has made it shorter', () => {
    const { visit, assessment } = example('step-by-step')
    const table = convergenceChart(visit, assessment, METRIC)!.table
    const stretches = table.rows.map((row) => row[2]!.match(/\d+/g)?.map(Number) ?? [])
    const [first, second, last] = stretches.map(([low = 0, high = 0]) => high - low)
    expect(second!).toBeGreaterThan(0)
    expect(second!).toBeLessThan(first!)
    expect(last).toBe(0)
    expect(table.rows.at(-1)).toEqual(['2', '312 g', 'not sized', 'hold'])
  })

  test('[property] a stretch of pounds and ounces is named whole, and no first label lies on its axis', () => {
    const { visit, assessment } = example('step-by-step')
    const picture = convergenceChart(visit, assessment, INCH_POUND)!
    expect(picture.table.rows[0]?.[2]).toMatch(/^[\d.]+ oz to 1 lb [\d.]+ oz$/)
    for (const { svg } of [picture, stepsChart(visit, assessment, INCH_POUND)!]) {
      const texts = textsOf(svg)
      // The title of the upright axis begins at the axis.
      const axis = Math.min(...texts.filter(({ words }) => /, (oz|°F)$/.test(words)).map(({ left }) => left))
      const first = texts.find(({ words }) => /°F$| to /.test(words) && !/, °F$/.test(words))!
      expect(first.left).toBeGreaterThan(axis + 5)
    }
  })

  test('[limit] without a step, or without a twin, there is nothing to close', () => {
    for (const name of ['orifice-add', 'capillary-weighed-in']) {
      const { visit, assessment } = example(name)
      expect(convergenceChart(visit, assessment, METRIC)).toBeUndefined()
    }
  })
})

test.each([
  ['Btu/lb', INCH_POUND],
  ['kJ/kg', METRIC],
] as const)('[property] the plate is in %s where its reader is', (unit, preference) => {
  const { visit, assessment } = example('orifice-add')
  const { svg, table } = plateOfVisit(visit, assessment, preference)!
  expect(textsOf(svg).map(({ words }) => words)).toContain(`enthalpy, ${unit}`)
  expect(table.head.at(-1)).toBe(`enthalpy, ${unit}`)
})

describe('where there is nothing to draw', () => {
  test('[limit] an empty visit has no pictures', () => {
    expect(all(visitOf(), METRIC, DESK)).toEqual([])
  })

  test('[limit] an unknown refrigerant has no plate', () => {
    const { visit, assessment } = visitOf({ kind: 'system-described', facts: { refrigerant: 'R-0<&>' } })
    expect(plateOfVisit(visit, assessment, METRIC)).toBeUndefined()
  })

  test('[limit] absurd readings are drawn to scale and not cut', () => {
    const each = exampleWith(
      'orifice-add',
      { kind: 'reading', what: 'suction-temperature', value: '900 °F' },
      { kind: 'reading', what: 'condenser-entering-air', value: '-200 °F' },
    )
    for (const picture of all(each, INCH_POUND, PHONE)) expectSound(picture, PHONE)
  })
})

test('[property] every finding has a mark of its own', () => {
  const kinds = ['add', 'recover', 'hold', 'not-the-charge', 'not-ready', 'cannot-tell'] as const
  const marks = kinds.map((kind) => findingMark(kind, 46))
  expect(new Set(marks).size).toBe(kinds.length)
  for (const mark of marks) expect(unclosed(mark)).toEqual([])
})
