import { expect, test } from 'vitest'
import type { Fact } from './event.ts'
import { fold } from './fold.ts'

const at = '2026-02-03T10:00:00Z'
const MICRON = 101_325 / 760_000
const visitOf = (...facts: readonly Fact[]) =>
  fold({ id: 'v', events: facts.map((fact, i) => ({ id: `e${i}`, at, ...fact })) })
const begun: Fact = { kind: 'vacuum-test', criterion: 'specification', resolution: '1 micron', coldestSpot: '50 °F' }
const reading = (after: string, pressure: string): Fact => ({ kind: 'vacuum-reading', after, pressure })

test('[property] readings belong to the test begun before them, in the order of their times', () => {
  const { vacuumTests, problems } = visitOf(
    begun,
    reading('10 min', '340 micron'),
    reading('0 min', '250 micron'),
    begun,
    reading('0 min', '200 micron'),
  )
  expect(problems).toEqual([])
  expect(vacuumTests.map(({ readings }) => readings.map(({ typed }) => typed))).toEqual([
    ['250 micron', '340 micron'],
    ['200 micron'],
  ])
  expect(vacuumTests[0]?.resolution?.si).toBeCloseTo(MICRON, 12)
  expect(vacuumTests[0]?.coldestSpot?.si).toBeCloseTo(283.15, 9)
})

test('[property] a reading without a test before it begins one by the specification', () => {
  const { vacuumTests } = visitOf(reading('0 min', '41 Pa'))
  expect(vacuumTests).toMatchObject([{ eventId: 'e0', criterion: 'specification', readings: [{ typed: '41 Pa' }] }])
})

test.each([
  ['41 Pa', 41],
  ['0.41 mbar', 41],
  ['300 micron', 300 * MICRON],
])('[property] a vacuum gauge that shows %s shows it absolute', (typed, si) => {
  expect(visitOf(reading('0 min', typed)).vacuumTests[0]?.readings[0]?.pressure.si).toBeCloseTo(si, 9)
})

test('[property] a log is kept as it was pasted, the last one of a test', () => {
  const { vacuumTests } = visitOf(
    begun,
    { kind: 'vacuum-log', text: '0 min, 250' },
    { kind: 'vacuum-log', text: '0 min, 260\n5 min, 300', unit: 'micron' },
  )
  expect(vacuumTests[0]?.log).toEqual({
    eventId: 'e2',
    at,
    position: 2,
    text: '0 min, 260\n5 min, 300',
    unit: 'micron',
  })
})

test('[limit] what cannot be read is a problem of its entry, and the rest of the test stands', () => {
  const { vacuumTests, problems } = visitOf(
    { kind: 'vacuum-test', criterion: 'maker', start: '300 micron', limit: 'deep', hold: '1 h' },
    reading('soon', '250 micron'),
    reading('5 min', '260 micron'),
  )
  expect(problems.map(({ eventId, problem }) => [eventId, problem.field])).toEqual([
    ['e0', 'Vacuum not to rise above'],
    ['e1', 'Time since the valve was shut'],
  ])
  expect(vacuumTests[0]).not.toHaveProperty('limit')
  expect(vacuumTests[0]?.readings).toHaveLength(1)
})
