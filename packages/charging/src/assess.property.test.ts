import { type Evidence, INCH_POUND, METRIC, render } from '@chargewright/quantity'
import { refrigerantNames } from '@chargewright/refrigerant'
import {
  APPLICATIONS,
  type Fact,
  FIGURE_IDS,
  METERING_DEVICES,
  OBSERVATION_IDS,
  observationKind,
  READING_IDS,
  type ReadingId,
  readingKind,
} from '@chargewright/visit'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  assessed,
  described,
  ORIFICE,
  ORIFICE_READINGS,
  observed,
  reading,
  readings,
  settledNow,
} from '../test/visit-of.ts'
import { type Assessment, LIMITS } from './index.ts'

const words = (record: object) => fc.constantFrom(...(Object.keys(record) as never[]))
const hostile = fc.oneof(
  fc.double().map((x) => `${x} psig`),
  fc.double({ min: -500, max: 5000, noNaN: true }).map((x) => `${x.toFixed(1)} °F`),
  fc.constantFrom(
    '1e308 bar',
    '-400 °F',
    '1,234 psig',
    'NaN',
    '0 CFM',
    '0 ton',
    '∞',
    '72',
    '5 kg',
    '-14.7 psig',
    '0 micron',
  ),
  fc.string({ minLength: 1, maxLength: 20 }),
)

const plausible = (id: ReadingId): fc.Arbitrary<string> => {
  const [unit, min, max] = {
    temperature: ['°F', -40, 180],
    'gauge pressure': ['psig', -10, 600],
    airflow: ['CFM', 100, 3000],
    'relative humidity': ['%', 1, 100],
    current: ['A', 0, 60],
    voltage: ['V', 90, 500],
    power: ['W', 0, 20_000],
  }[readingKind(id).accepts[0] as string] as [string, number, number]
  return fc.double({ min, max, noNaN: true }).map((x) => `${x.toFixed(1)} ${unit}`)
}

const anyFact: fc.Arbitrary<Fact> = fc.oneof(
  {
    weight: 6,
    arbitrary: fc
      .constantFrom(...READING_IDS)
      .chain((id) => fc.oneof({ weight: 5, arbitrary: plausible(id) }, hostile).map((value) => reading(id, value))),
  },
  {
    weight: 2,
    arbitrary: fc
      .constantFrom(...OBSERVATION_IDS)
      .chain((id) => words(observationKind(id).answers).map((answer) => observed(id, answer))),
  },
  fc.record({
    kind: fc.constant('refrigerant-moved' as const),
    direction: fc.constantFrom('into-system' as const, 'out-of-system' as const),
    mass: fc.oneof(
      fc.double({ min: 0, max: 50, noNaN: true }).map((x) => `${x.toFixed(2)} oz`),
      hostile,
    ),
    phase: fc.constantFrom('liquid' as const, 'vapour' as const),
    port: fc.constantFrom('suction' as const, 'discharge' as const, 'liquid-line' as const, 'receiver' as const),
    compressor: fc.constantFrom('running' as const, 'stopped' as const),
  }),
  fc.record({
    kind: fc.constant('wait' as const),
    purpose: fc.constantFrom('settle' as const, 'equalise' as const),
    duration: fc.constantFrom('15 min', '5 min', '10 min', '1 h', 'a while'),
  }),
)

const anyFacts = fc
  .record(
    {
      refrigerant: fc.oneof(
        { weight: 9, arbitrary: fc.constantFrom(...refrigerantNames()) },
        fc.string({ minLength: 1, maxLength: 9 }),
      ),
      meteringDevice: words(METERING_DEVICES),
      application: words(APPLICATIONS),
      receiver: fc.boolean(),
      sightGlass: fc.boolean(),
      nominalCapacity: fc.oneof(fc.constant('3 ton'), hostile),
      nameplateCharge: fc.oneof(fc.constant('6 lb'), hostile),
      nameplateSubcooling: fc.constant('10 °F'),
    },
    { requiredKeys: [] },
  )
  .chain((facts) => fc.constantFrom(...FIGURE_IDS).chain((id) => hostile.map((text) => ({ ...facts, [id]: text }))))

/** Every number in an assessment's statements, all the way down. */
function numbers(assessment: Assessment): readonly number[] {
  const inStatement = (s: Evidence['statement']): readonly number[] =>
    s.values.flatMap((v) =>
      typeof v === 'number'
        ? [v]
        : typeof v === 'string' || 'verbatim' in v
          ? []
          : 'template' in v
            ? inStatement(v)
            : [v.si, v.u ?? 0],
    )
  const inTree = (e: Evidence): readonly number[] => [...inStatement(e.statement), ...e.from.flatMap(inTree)]
  const { finding, conditions, lookAlikes, cautions } = assessment
  return [
    ...inStatement(finding.sentence),
    ...[...finding.reasons, ...conditions.map((c) => c.evidence), ...lookAlikes.map((l) => l.evidence)].flatMap(inTree),
    ...[...finding.steps, ...cautions.map((c) => c.statement)].flatMap(inStatement),
  ]
}

describe('whatever is entered', () => {
  test('[property] there is an answer in finite numbers, and only a safe one moves refrigerant', () => {
    fc.assert(
      fc.property(anyFacts, fc.array(anyFact, { maxLength: 40 }), (facts, entries) => {
        const found = assessed(described(facts), entries)
        expect(numbers(found).every(Number.isFinite)).toBe(true)
        expect(render(found.finding.sentence, METRIC)).not.toMatch(/undefined|NaN|\{\d/)

        const { finding, conditions, lookAlikes } = found
        const moves = finding.kind === 'add' || finding.kind === 'recover'
        expect(finding.dose !== undefined).toBe(moves)
        if (!moves) return
        expect(finding.dose!.mass.si).toBeGreaterThanOrEqual(0)
        expect(conditions.filter(({ state }) => state === 'unmet' || state === 'unknown')).toEqual([])
        expect(lookAlikes.filter(({ verdict }) => verdict === 'explains' || verdict === 'open')).toEqual([])
        // Never liquid into a running low side.
        expect(finding.dose).not.toMatchObject({ direction: 'into-system', phase: 'liquid', compressor: 'running' })
      }),
      { numRuns: 4000, seed: 7 },
    )
  })

  const inBoth = fc.record({
    suction: fc.double({ min: 40, max: 80, noNaN: true }),
    outdoor: fc.double({ min: 50, max: 115, noNaN: true }),
    liquid: fc.double({ min: 80, max: 102, noNaN: true }),
  })

  test('[property] both unit systems get the same finding', () => {
    fc.assert(
      fc.property(inBoth, (T) => {
        const found = (write: (F: number) => string) =>
          assessed(
            described(ORIFICE),
            settledNow,
            readings({
              ...ORIFICE_READINGS,
              'suction-temperature': write(T.suction),
              'condenser-entering-air': write(T.outdoor),
              'liquid-temperature': write(T.liquid),
            }),
          ).finding
        const inF = found((F) => `${F.toFixed(9)} °F`)
        const inC = found((F) => `${((F - 32) / 1.8).toFixed(9)} °C`)
        expect(inC.kind).toBe(inF.kind)
        expect(render(inC.sentence, INCH_POUND)).toBe(render(inF.sentence, INCH_POUND))
      }),
      { numRuns: 100, seed: 8 },
    )
  })

  test('[property] as superheat rises the answer goes from recover over hold to add, never back', () => {
    const order = ['recover', 'cannot-tell', 'hold', 'cannot-tell', 'add']
    let reached = 0
    for (let suction = 42; suction < 75; suction += 0.25) {
      // Between little and plenty of liquid, the one that leaves the charge as the only cause on either side.
      const liquid = suction < 54 ? '105.5 °F' : '114.5 °F'
      const { kind } = assessed(
        described(ORIFICE),
        settledNow,
        readings({ ...ORIFICE_READINGS, 'suction-temperature': `${suction} °F`, 'liquid-temperature': liquid }),
      ).finding
      if (kind !== order[reached]) reached++
      expect(kind).toBe(order[reached])
    }
    expect(order[reached]).toBe('add')
  })
})

test.each(Object.entries(LIMITS))(
  '[property] the limit %s is finite and names its source',
  (_, { quantity, source }) => {
    expect(Number.isFinite(quantity.si)).toBe(true)
    expect(source.length).toBeGreaterThan(10)
  },
)
