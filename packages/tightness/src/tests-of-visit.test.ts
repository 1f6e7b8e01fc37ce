import { METRIC, render, STANDARD_ATMOSPHERE } from '@chargewright/quantity'
import { type Fact, fold } from '@chargewright/visit'
import { expect, test } from 'vitest'
import { pressureTestOfVisit, vacuumTestOfVisit } from './tests-of-visit.ts'
import { vacuumUnits } from './vacuum-units.ts'

const at = '2026-02-03T10:00:00Z'
const visitOf = (...facts: readonly Fact[]) =>
  fold({ id: 'v', events: facts.map((fact, i) => ({ id: `e${i}`, at, ...fact })) })
const vacuum = (...facts: readonly Fact[]) => vacuumTestOfVisit(visitOf(...facts).vacuumTests.at(-1)!)
const reading = (after: string, pressure: string): Fact => ({ kind: 'vacuum-reading', after, pressure })
const specification: Fact = { kind: 'vacuum-test', criterion: 'specification' }
const maker = { kind: 'vacuum-test', criterion: 'maker' } as const

test('[property] typed readings and the same readings pasted as a log have one finding', () => {
  const typed = vacuum(specification, reading('0 min', '280 micron'), reading('60 min', '460 micron'))
  const pasted = vacuum(specification, { kind: 'vacuum-log', text: 'time, micron\n0 min, 280\n60 min, 460' })
  expect(typed.ok && typed.value.finding.kind).toBe('pass')
  expect(pasted).toEqual(typed)
})

test('[property] the maker’s own figures are what it is held against, and they say so', () => {
  const judged = vacuum({ ...maker, start: '40 Pa', limit: '60 Pa', hold: '10 min' }, reading('0 min', '30 Pa'))
  expect(judged).toMatchObject({ ok: true, value: { criterion: { source: 'the maker’s, as typed' } } })
  expect(judged.ok && render(judged.value.finding.sentence, vacuumUnits(METRIC))).toContain('60')
})

test('[property] the coldest spot counts: ice would not show there', () => {
  const cold: Fact = { ...specification, kind: 'vacuum-test', criterion: 'specification', coldestSpot: '-20 °C' }
  const judged = vacuum(cold, reading('0 min', '10 Pa'), reading('1 h', '12 Pa'))
  // At -20 °C ice has 103 Pa, above the limit of 67 Pa; at -40 °C 13 Pa.
  expect(judged.ok && judged.value.finding.kind).toBe('pass')
  const colder = vacuum({ ...cold, coldestSpot: '-40 °C' } as Fact, reading('0 min', '10 Pa'), reading('1 h', '12 Pa'))
  expect(colder.ok && colder.value.finding.kind).toBe('too-cold')
})

test.each([
  ['no reading yet', [specification], 'Vacuum'],
  [
    'a part of the maker’s criterion is missing',
    [{ ...maker, start: '300 micron' }, reading('0 min', '250 micron')],
    'The maker’s criterion',
  ],
  ['two readings at one time', [reading('5 min', '250 micron'), reading('5 min', '260 micron')], 'reading 2, time'],
  [
    'a log whose unit is none of pressure',
    [{ kind: 'vacuum-log', text: '0 min, 3', unit: 'A' }],
    'Unit of the vacuum log',
  ],
] as const)('[limit] %s: the problem names it', (_, facts, field) => {
  const judged = vacuum(...facts)
  expect(judged.ok ? undefined : judged.error.field).toBe(field)
})

const standing = (...facts: readonly Fact[]) =>
  pressureTestOfVisit(visitOf(...facts).pressureTests.at(-1)!, STANDARD_ATMOSPHERE)
const read = (after: string, pressure: string, temperature: string): Fact => ({
  kind: 'pressure-test-reading',
  after,
  pressure,
  temperature,
})

test('[property] each later reading is held against the first, and its reasons lead to both entries', () => {
  const judged = standing(
    read('0 h', '300 psig', '90 °F'),
    read('12 h', '290 psig', '75 °F'),
    read('24 h', '200 psig', '75 °F'),
  )
  if (!judged.ok) throw new Error(judged.error.field)
  expect(judged.value.findings.map(({ finding }) => finding.kind)).toEqual(['no-leak-seen', 'leak'])
  expect(judged.value.last.reasons[0]?.from.map(({ eventId }) => eventId)).toEqual(['e0', 'e2'])
})

test('[property] steps of both instruments make the test finer: their own errors cancel', () => {
  const begun: Fact = {
    kind: 'pressure-test',
    gas: 'nitrogen',
    gauge: { resolution: '0.1 psi' },
    thermometer: { resolution: '0.1 °F' },
  }
  const readings = [read('0 h', '300 psig', '75 °F'), read('24 h', '300 psig', '75 °F')]
  const [plain, fine] = [standing(...readings), standing(begun, ...readings)]
  if (!plain.ok || !fine.ok) throw new Error('not judged')
  expect(fine.value.last.detectable.si).toBeLessThan(0.6 * plain.value.last.detectable.si)
})

test('[limit] one reading alone is no test yet', () => {
  const judged = standing(read('0 h', '300 psig', '90 °F'))
  expect(judged).toMatchObject({ ok: false, error: { kind: 'missing', value: 'one' } })
})
