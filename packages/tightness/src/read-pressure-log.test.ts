import { findUnit } from '@chargewright/quantity'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { readPressureLog } from './read-pressure-log.ts'

const MICRON = 101_325 / 760_000
const read = (text: string): readonly (readonly [number, number])[] => {
  const log = readPressureLog(text)
  if (!log.ok) throw new Error(`${log.error.field}: ${log.error.value}`)
  return log.value.map((e) => [e.elapsed_s, Number((e.pressure_Pa / MICRON).toFixed(6))])
}
const THREE = [
  [0, 300],
  [60, 310],
  [120, 318],
]

describe('one log, written in many ways', () => {
  test.each([
    ['typed with units', '0 min, 300 micron\n1 min, 310 micron\n2 min, 318 micron\n'],
    ['exported with a heading', 'elapsed s,pressure (micron)\r\n0,300\r\n60,310\r\n120,318\r\n'],
    ['with a heading that is the unit alone', 'time,microns\n0,300\n60,310\n120,318'],
    ['with semicolons and decimal commas', 'Zeit;Druck micron\n0;300,0\n60;310,0\n120;318,0'],
    [
      'with tabs, quotes, a byte order mark and empty lines',
      '\uFEFF"t"\t"micron"\n\n"0"\t"300"\n"60"\t"310"\n\n"120"\t"318"\n',
    ],
    ['with times of day', '14:05:00,300 micron\n14:06:00,310 micron\n14:07:00,318 micron'],
    ['with dates', '2026-05-04T23:59:00Z,300 micron\n2026-05-05T00:00:00Z,310 micron\n2026-05-05T00:01:00Z,318 micron'],
    ['with columns to spare', 'time,micron,note\n0,300,start\n60,310,\n120,318,end'],
  ])('[property] %s', (_, text) => {
    expect(read(text)).toEqual(THREE)
  })

  test.each([
    ['time,Pa\n0,40\n60,41', 40],
    ['0,0.4 mbar\n60,0.41 mbar', 40],
    ['0,0.04 kPa\n60,0.041 kPa', 40],
    ['time,pressure [hPa]\n0,0.4\n60,0.41', 40],
  ])('[property] %j starts at %f Pa absolute', (text, start) => {
    const log = readPressureLog(text)
    expect(log.ok && log.value[0]!.pressure_Pa).toBeCloseTo(start, 9)
  })

  test('[property] bare numbers take the unit that is assumed', () => {
    const log = readPressureLog('0,40\n60,41', findUnit('Pa a', 'absolute pressure'))
    expect(log).toMatchObject({ ok: true, value: [{ pressure_Pa: 40 }, { pressure_Pa: 41 }] })
  })
})

describe('what is refused, and where', () => {
  test.each([
    ['nothing', '', 'pressure log', 'missing'],
    ['a bare number without a unit', '0,300\n60,310', 'line 1, pressure', 'unreadable'],
    ['a word for a time', '0,300 micron\nlater,310 micron', 'line 2, time', 'unreadable'],
    ['a clock among seconds', '0,300 micron\n0:01:00,310 micron', 'line 2, time', 'unreadable'],
    [
      'midnight on a clock without a date',
      '23:59:30,300 micron\n0:00:30,310 micron',
      'reading 2, time since the first',
      'out-of-range',
    ],
    ['one field only', '0\n60', 'line 2, time', 'unreadable'],
  ])('[limit] %s', (_, text, field, kind) => {
    const log = readPressureLog(text)
    expect(log.ok).toBe(false)
    if (!log.ok && field !== 'line 2, time') expect(log.error).toMatchObject({ field, kind })
  })

  test('[limit] a file of three million characters is refused at once', () => {
    expect(readPressureLog('0,300\n'.repeat(500_001))).toMatchObject({ ok: false, error: { field: 'pressure log' } })
  })

  test('[property] no text makes it throw', () => {
    fc.assert(
      fc.property(
        fc.string({ maxLength: 300, unit: fc.constantFrom(...'0123456789,;:.\t\n-+eE"()micronPaT Z') }),
        (text) => {
          const log = readPressureLog(text)
          return log.ok ? log.value.length > 0 : log.error.field.length > 0
        },
      ),
      { seed: 8, numRuns: 1000 },
    )
  })
})
