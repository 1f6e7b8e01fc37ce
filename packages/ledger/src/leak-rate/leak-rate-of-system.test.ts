import type { Fact, VisitEvent } from '@chargewright/visit'
import { expect, test } from 'vitest'
import { leakRateOfSystem } from './leak-rate-of-system.ts'

const move = (direction: 'into-system' | 'out-of-system', mass: string): Fact => ({
  kind: 'refrigerant-moved',
  direction,
  mass,
  phase: 'liquid',
  port: 'liquid-line',
  compressor: 'stopped',
})
const visit = (id: string, day: string, ...facts: readonly Fact[]) => ({
  id,
  events: facts.map((fact, i): VisitEvent => ({ id: `${id}-${i}`, at: `${day}T10:00:00Z`, ...fact })),
})
const plate: Fact = { kind: 'system-described', facts: { refrigerant: 'R-22', nameplateCharge: '60 lb' } }
const first = visit('a', '2025-10-06', plate, move('into-system', '3 lb'))
const second = visit('b', '2026-02-03', move('into-system', '8 lb'), move('out-of-system', '3 lb'))

// The worked example of the ledger: 5 lb of 60 lb after 120 days are 25.3472 % a year, over the 20 % of commercial refrigeration.
test('[property] both methods speak after the last addition, net of what came out, and clocks run where one is over', () => {
  const found = leakRateOfSystem([first, second], 'commercial-refrigeration')
  if (!found.ok) throw new Error(found.error.field)
  expect(found.value.on).toBe('2026-02-03')
  expect(found.value.additions.map(({ mass }) => Math.round(mass.si / 0.45359237))).toEqual([3, 5])
  const law = found.value.laws.find(({ coverage }) => coverage.law.id === '40 CFR 82.157')!
  expect(law.rates.map((rate) => rate.ok && rate.value.over)).toEqual([true, false])
  expect(law.clocks[0]?.due).toEqual({ kind: 'by', day: '2026-03-05' })
  expect(structuredClone(found)).toEqual(found)
})

test('[limit] what is missing for a rate is named', () => {
  const field = (...visits: Parameters<typeof leakRateOfSystem>[0]) => {
    const found = leakRateOfSystem(visits, 'comfort-cooling')
    return found.ok ? undefined : found.error.field
  }
  expect(field(visit('a', '2026-01-01', move('into-system', '1 lb')))).toBe('Full charge')
  expect(field(visit('a', '2026-01-01', plate, move('out-of-system', '1 lb')))).toBe('Additions')
})
