import { METRIC, render } from '@chargewright/quantity'
import { findRefrigerant } from '@chargewright/refrigerant'
import { fold, type SystemStatement, type Visit, type VisitEvent } from '@chargewright/visit'
import { describe, expect, test } from 'vitest'
import { learntTwin } from './learnt-twin.ts'
import { sizedSystem } from './sized-system.ts'

const FACTS: SystemStatement = {
  refrigerant: 'R-410A',
  meteringDevice: 'fixed-orifice',
  application: 'comfort-cooling',
  nominalCapacity: '3 ton',
  nameplateCharge: '6 lb 8 oz',
}

const SETTLED = {
  'condenser-entering-air': '95 °F',
  'return-air-dry-bulb': '80 °F',
  'return-air-wet-bulb': '67 °F',
  'suction-pressure': '128 psig',
  'suction-temperature': '57 °F',
  'liquid-pressure': '405 psig',
  'liquid-temperature': '107 °F',
} as const

function visitOf(facts: SystemStatement, readings: Readonly<Partial<Record<keyof typeof SETTLED, string>>>): Visit {
  const at = '2026-06-01T09:00:00Z'
  const read = Object.entries(readings).map(
    ([what, value], i): VisitEvent => ({ id: `r${i}`, at, kind: 'reading', what: what as keyof typeof SETTLED, value }),
  )
  return fold({ id: 'v', events: [{ id: 's', at, kind: 'system-described', facts }, ...read] })
}

function learnt(facts: SystemStatement, readings: Parameters<typeof visitOf>[1] = SETTLED) {
  const refrigerant = findRefrigerant('R-410A')
  if (!refrigerant.ok) throw new Error('no R-410A')
  return learntTwin({ visit: visitOf(facts, readings), refrigerant: refrigerant.value })
}

const reason = (...asked: Parameters<typeof learnt>) => {
  const found = learnt(...asked)
  return found.ok ? 'learnt' : render(found.error, METRIC)
}

describe('the twin of a visit', () => {
  test('[property] that reads as its rated state holds its nameplate charge', () => {
    const found = learnt(FACTS)
    if (!found.ok) throw new Error(render(found.error, METRIC))
    const { learned, system, sets } = found.value
    expect(sets).toHaveLength(1)
    expect(learned.charge_kg / system.rated.charge_kg).toBeCloseTo(1, 1)
  })

  test.each([
    [{ ...FACTS, receiver: true }, SETTLED, /receiver hides/],
    [{ ...FACTS, nominalCapacity: null }, SETTLED, /Nominal capacity: missing/],
    [FACTS, { 'suction-pressure': '128 psig' }, /never read together/],
    [FACTS, { ...SETTLED, 'suction-temperature': '120 °F', 'liquid-temperature': '60 °F' }, /cannot explain/],
  ] as const)('[property] says why there is none: case %#', (facts, readings, why) => {
    expect(reason(facts, readings)).toMatch(why)
  })
})

describe('a system sized from its facts', () => {
  const problems = (facts: SystemStatement) => {
    const sized = sizedSystem(visitOf(facts, {}).system)
    return sized.ok ? [] : sized.error.map(({ kind, field }) => `${kind} ${field}`)
  }

  test('[property] is rated as its nameplate says', () => {
    const sized = sizedSystem(visitOf({ ...FACTS, nameplateSubcooling: '12 °F' }, {}).system)
    expect(sized.ok && sized.value.rated).toMatchObject({
      subcooling_K: expect.closeTo(12 / 1.8, 9),
      capacity_W: expect.closeTo(10_550.6, 1),
    })
    expect(problems({ ...FACTS, receiver: true, accumulator: true, meteringDevice: 'thermostatic' })).toEqual([])
  })

  test('[limit] every missing fact is named at once', () => {
    expect(problems({})).toHaveLength(5)
    expect(problems({ ...FACTS, nameplateCharge: null })).toEqual(['missing Nameplate charge'])
  })

  test.each([
    ['nominalCapacity', '0 W', 'Nominal capacity'],
    ['nameplateCharge', '0 g', 'Nameplate charge'],
    ['nameplateSubcooling', '80 °F', 'Nameplate subcooling'],
    ['lineLength', '900 m', 'Line length'],
    ['boxSetPoint', '300 °F', 'Box set point'],
  ] as const)('[limit] %s of %s is refused by name', (figure, typed, label) => {
    expect(problems({ ...FACTS, [figure]: typed })).toEqual([`out-of-range ${label}`])
  })

  test('[limit] a refrigerant that is not known, or does not condense in outdoor air, is refused', () => {
    expect(problems({ ...FACTS, refrigerant: 'R-9999' })).toEqual([expect.stringMatching(/refrigerant/i)])
    expect(problems({ ...FACTS, refrigerant: 'R-744' })).toEqual([expect.stringMatching(/refrigerant/i)])
  })
})
