import { expect, test } from 'vitest'
import type { Fact } from './event.ts'
import { fold } from './fold.ts'

const at = '2026-02-03T10:00:00Z'
const visitOf = (...facts: readonly Fact[]) =>
  fold({ id: 'v', events: facts.map((fact, i) => ({ id: `e${i}`, at, ...fact })) })
const supply = (...voltages: string[]): Fact => ({ kind: 'supply-measured', voltages, nominal: '460 V' })

test('[property] the supply that was measured last stands, with the uncertainty of a voltmeter', () => {
  const visit = visitOf(supply('230 V'), supply('462 V', '463 V', '455 V'))
  expect(visit.supply?.voltages.map(({ si }) => si)).toEqual([462, 463, 455])
  expect(visit.supply?.voltages[0]?.u).toBeCloseTo((1 + 4.62) / Math.sqrt(6), 9)
  expect(visit.supply?.nominal).toEqual({ dimension: 'voltage', si: 460 })
})

test('[limit] one voltage that cannot be read leaves none standing, and is named', () => {
  const visit = visitOf(supply('230 V'), supply('462 V', 'high', '455 V'))
  expect(visit.supply).toBeUndefined()
  expect(visit.problems).toMatchObject([{ eventId: 'e1', problem: { field: 'Voltage 2' } }])
})
