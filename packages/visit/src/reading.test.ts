import { describe, expect, test } from 'vitest'
import { doubtReading, readReading } from './reading.ts'
import type { ReadingId } from './reading-kind.ts'

const origin = { eventId: 'a', at: '2026-02-03T10:00:00Z', position: 4 }

function read(what: ReadingId, value: string) {
  const reading = readReading({ kind: 'reading', what, value }, origin)
  if (!reading.ok) throw new Error(JSON.stringify(reading.error))
  return reading.value
}

describe('a reading', () => {
  test('[property] keeps the text as typed beside SI with its uncertainty, and where it came from', () => {
    // RA3.2.2, 2013: ±3.5 psi for a suction gauge, taken as a limit that is seldom reached.
    const { quantity, ...rest } = read('suction-pressure', ' 118,0 psi ')
    expect(rest).toEqual({
      ...origin,
      what: 'suction-pressure',
      typed: ' 118,0 psi ',
      uncertaintySource: 'regulation limit for suction gauges (RA3.2.2, 2013)',
    })
    expect(quantity.dimension).toBe('gauge pressure')
    expect(quantity.si).toBeCloseTo(118 * 6894.757, 0)
    expect(quantity.u).toBeCloseTo((3.5 * 6894.757) / Math.sqrt(6), 0)
  })

  test('[property] a pressure typed as absolute stays absolute', () => {
    expect(read('liquid-pressure', '25,2 bar a').quantity).toMatchObject({ dimension: 'absolute pressure', si: 25.2e5 })
  })

  test('[limit] one that cannot be read names its field, its value and what would do', () => {
    const reading = readReading({ kind: 'reading', what: 'airflow', value: 'plenty' }, origin)
    expect(reading).toEqual({
      ok: false,
      error: {
        kind: 'unreadable',
        field: 'Airflow',
        value: 'plenty',
        accepted: 'a number with a unit: CFM, m³/h, L/s, m³/s',
      },
    })
  })
})

describe('a doubt', () => {
  const inside: readonly [ReadingId, string][] = [
    ['return-air-dry-bulb', '122 °F'],
    ['suction-pressure', '118 psig'],
    ['suction-pressure', '20 inHg vac'],
    ['return-air-humidity', '5 %'],
  ]
  test.each(inside)('[limit] none about %s at %s', (what, value) => {
    expect(doubtReading(read(what, value))).toBeUndefined()
  })

  const outside: readonly [ReadingId, string, object][] = [
    ['return-air-dry-bulb', '752 °F', { field: 'Return air, dry bulb', value: 752, min: -49, max: 122, unit: '°F' }],
    ['return-air-dry-bulb', '106 °C', { field: 'Return air, dry bulb', value: 106, min: -45, max: 50, unit: '°C' }],
    [
      'liquid-pressure',
      '250 bar',
      { field: 'Liquid pressure', value: 250, min: -0.91325, max: 148.987, unit: 'bar g' },
    ],
    ['liquid-pressure', '250 bar a', { field: 'Liquid pressure', value: 250, min: 0.1, max: 150, unit: 'bar a' }],
    // A unit that counts downwards: the limits are turned round with it.
    ['suction-pressure', '29 inHg vac', { value: 29, min: -4399.58, max: 26.9683, unit: 'inHg vac' }],
    ['airflow', '10 CFM', { value: 10, min: 21.1888, max: 42377.6, unit: 'CFM' }],
  ]
  test.each(outside)('[limit] about %s at %s, in the unit that was typed', (what, value, problem) => {
    expect(doubtReading(read(what, value))).toMatchObject({ kind: 'out-of-range', ...problem })
  })
})
