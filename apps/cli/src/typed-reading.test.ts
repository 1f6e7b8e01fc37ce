import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { PLAIN, typedReading } from './typed-reading.ts'

function read(...args: Parameters<typeof typedReading>) {
  const reading = typedReading(...args)
  if (!reading.ok) throw new Error(reading.error.kind)
  return reading.value
}

describe('a reading with a ±', () => {
  test.each([
    ['240 V ± 2 V', 'voltage', 240, 1],
    ['240 ± 2 V', 'voltage', 240, 1],
    ['240V+/-2', 'voltage', 240, 1],
    ['100 psig ± 3 psi', 'gauge pressure', 689_475.7, 10_342.1],
    ['100 ± 3 psig', 'gauge pressure', 689_475.7, 10_342.1],
    ['0 °C ± 0.5 K', 'temperature', 273.15, 0.25],
    ['32 ± 0.9 °F', 'temperature', 273.15, 0.25],
    ['-10 ± 1 °C', 'temperature', 263.15, 0.5],
  ] as const)('[property] %s has half the band as its standard uncertainty', (text, dimension, si, u) => {
    const reading = read(text, dimension, 'reading', PLAIN.voltmeter)
    expect(reading.si).toBeCloseTo(si, 0)
    expect(reading.u).toBeCloseTo(u, 0)
  })
})

test('[property] without a ± it is as good as a plain instrument, or exact where none is named', () => {
  const { limit, fraction } = PLAIN.voltmeter
  expect(read('240 V', 'voltage', 'volts', PLAIN.voltmeter).u).toBeCloseTo((limit + fraction * 240) / Math.sqrt(6), 12)
  expect(read('240 V', 'voltage', 'volts')).not.toHaveProperty('u')
})

test('[property] what it prints can be typed again', () => {
  fc.assert(
    fc.property(fc.integer({ min: 30, max: 900 }), fc.integer({ min: 1, max: 20 }), (volts, band) => {
      expect(read(`${volts} ± ${band} V`, 'voltage', 'volts')).toEqual({ dimension: 'voltage', si: volts, u: band / 2 })
    }),
    { seed: 71 },
  )
})

test.each(['', '±', '240', '240 V ±', '± 2 V', '240 V ± 2 A', '240 V ± 1 ± 2', '240 ± 2'])(
  '[limit] %j is a problem of its field',
  (text) => {
    expect(typedReading(text, 'voltage', 'volts')).toMatchObject({
      ok: false,
      error: { field: expect.stringMatching(/^volts/) },
    })
  },
)
