import { expect, test } from 'vitest'
import { pressureLog } from './pressure-log.ts'

const entry = (elapsed_s: number, pressure_Pa: number) => ({ elapsed_s, pressure_Pa })

test('[property] time counts from the first reading', () => {
  expect(pressureLog([entry(100, 40), entry(160, 41)])).toEqual({ ok: true, value: [entry(0, 40), entry(60, 41)] })
})

test.each([
  ['no readings', [], 'readings in the log'],
  ['a reading out of order', [entry(0, 40), entry(60, 41), entry(30, 42)], 'reading 3, time'],
  ['two readings at one moment', [entry(0, 40), entry(0, 41)], 'reading 2, time'],
  ['no pressure', [entry(0, 0)], 'reading 1, pressure'],
  ['a pressure above the atmosphere', [entry(0, 200_000)], 'reading 1, pressure'],
  ['a pressure that is no number', [entry(0, Number.NaN)], 'reading 1, pressure'],
  ['a time that is no number', [entry(0, 40), entry(Number.NaN, 41)], 'reading 2, time since the first'],
  ['a first time that is no number', [entry(Number.NaN, 40)], 'reading 1, time since the first'],
  ['more than a month', [entry(0, 40), entry(31 * 86_400, 41)], 'reading 2, time since the first'],
  ['more readings than anyone takes', Array.from({ length: 20_001 }, (_, i) => entry(i, 40)), 'readings in the log'],
])('[limit] refuses %s', (_, entries, field) => {
  expect(pressureLog(entries)).toMatchObject({ ok: false, error: { field } })
})
