import type { SystemStatement, VisitEvent } from '@chargewright/visit'
import { expect, test } from 'vitest'
import { airflowOf } from './airflow-of.ts'
import type { AirflowWay } from './protocol.ts'

const at = '2026-06-03T13:00:00Z'
const CFM = 0.3048 ** 3 / 60
const visit = (facts: SystemStatement = {}, ...events: readonly VisitEvent[]) => ({
  id: 'v',
  events: [{ id: 'd', at, kind: 'system-described', facts } as const, ...events],
})
const heat = { kind: 'electric-heat', volts: '240 V', amps: '41.7 A', rise: '31.6 °F', phases: 1 } as const
const cfm = (way: AirflowWay, events = visit()) => {
  const found = airflowOf(events, way)
  if (!found.ok) throw new Error(found.error.field)
  return found.value.airflow.si / CFM
}

// COMPUTED by hand: 240 V · 41.7 A · 3.412/(1.08 · 31.6 °F) = 1000 CFM of standard air.
test('[oracle] ten kilowatts that warm the air by 31.6 °F tell 1000 CFM at sea level', () => {
  expect(cfm(heat)).toBeGreaterThan(970)
  expect(cfm(heat)).toBeLessThan(1030)
})

test('[property] thinner air of a high site takes more volume for the same heat', () => {
  const high = visit({ elevation: '5000 ft' })
  expect(cfm(heat, high) / cfm(heat)).toBeCloseTo(1 / 0.832, 2)
})

test('[property] a traverse of one velocity is that velocity times the area', () => {
  const way = {
    kind: 'traverse',
    duct: { width: '20 in', height: '12 in' },
    readings: Array(25).fill('600 ft/min'),
  } as const
  expect(cfm(way)).toBeCloseTo((600 * 20 * 12) / 144, 3)
})

test('[property] a drop of the maker’s table is its airflow, in standard air about', () => {
  const table = 'CFM,inH2O\n800,0.10\n1000,0.15\n1200,0.21'
  expect(cfm({ kind: 'pressure-drop', table, pressure: '0.15 inH2O' })).toBeGreaterThan(980)
  expect(cfm({ kind: 'pressure-drop', table, pressure: '0.15 inH2O' })).toBeLessThan(1020)
})

test.each([
  ['volts', { ...heat, volts: 'high' }, 'Volts at the heater'],
  ['a rise of nothing', { ...heat, rise: '0 °F' }, 'temperature rise'],
  ['a table without units', { kind: 'fan-table', table: 'a,b\n1,2', pressure: '0.5 inH2O' }, 'table, heading'],
  ['a point', { kind: 'traverse', duct: { diameter: '10 in' }, readings: ['3 m/s', 'fast'] }, 'Point 2'],
] as const)('[limit] %s that cannot be used is named', (_, way, field) => {
  const found = airflowOf(visit(), way)
  expect(found.ok ? undefined : found.error.field).toBe(field)
})
