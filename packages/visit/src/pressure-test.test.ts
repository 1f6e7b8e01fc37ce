import { expect, test } from 'vitest'
import type { Fact, VisitEvent } from './event.ts'
import { fold } from './fold.ts'

const at = '2026-02-03T10:00:00Z'
const visitOf = (...facts: readonly Fact[]) =>
  fold({ id: 'v', events: facts.map((fact, i) => ({ id: `e${i}`, at, ...fact })) })
const begun: Fact = {
  kind: 'pressure-test',
  gas: 'nitrogen',
  gauge: { accuracy: '2 psi', resolution: '1 psi' },
  thermometer: { accuracy: '1 °F' },
}
const reading = (after: string, pressure: string, temperature: string): Fact => ({
  kind: 'pressure-test-reading',
  after,
  pressure,
  temperature,
})

test('[property] readings are those of the instruments of their test, in the order of their times', () => {
  const { pressureTests, problems } = visitOf(
    begun,
    reading('24 h', '283 psig', '60 °F'),
    reading('0 h', '300 psig', '90 °F'),
  )
  expect(problems).toEqual([])
  const [first] = pressureTests[0]!.readings
  expect(first?.eventId).toBe('e2')
  // ± 2 psi as a 95 % band, and the rounding to 1 psi.
  expect(first?.pressure.u).toBeCloseTo(Math.hypot(1, 1 / Math.sqrt(12)) * 6894.757, 1)
  expect(first?.temperature.u).toBeCloseTo((0.5 * 5) / 9, 9)
})

test('[property] a reading without a test before it begins one, with plain instruments', () => {
  const { pressureTests } = visitOf(reading('0 h', '300 psig', '90 °F'))
  expect(pressureTests).toMatchObject([{ fact: { gas: 'nitrogen' }, readings: [{ eventId: 'e0' }] }])
})

test('[limit] a reading of which one part cannot be read is not used, and every such part is named', () => {
  const { pressureTests, problems } = visitOf(begun, reading('0 h', 'full', 'warm'))
  expect(pressureTests[0]?.readings).toEqual([])
  expect(problems.map(({ problem }) => problem.field)).toEqual(['Test pressure', 'Temperature of the gas'])
})

test('[property] a corrected reading takes its place again, and a withdrawn one leaves the test', () => {
  const events: readonly VisitEvent[] = [
    { id: 'a', at, ...begun },
    { id: 'b', at, ...reading('0 h', '300 psig', '90 °F') },
    { id: 'c', at, ...reading('24 h', '382 psig', '60 °F') },
    { id: 'd', at, kind: 'correction', corrects: 'c', replacement: reading('24 h', '283 psig', '60 °F') },
  ]
  const pressures = (...more: readonly VisitEvent[]) =>
    fold({ id: 'v', events: [...events, ...more] }).pressureTests[0]!.readings.map(({ pressure }) =>
      Math.round(pressure.si / 6894.757),
    )
  expect(pressures()).toEqual([300, 283])
  expect(pressures({ id: 'e', at, kind: 'correction', corrects: 'c' })).toEqual([300])
})
