import { describe, expect, test } from 'vitest'
import { atmosphereAt, typedPressure, typedShare, typedTemperature } from './typed-flag.ts'

const at = (altitude?: string) => {
  const atmosphere = atmosphereAt(altitude)
  if (!atmosphere.ok) throw new Error(atmosphere.error.kind)
  return atmosphere.value
}

describe('a pressure flag', () => {
  test('[property] takes psi and bar for gauge, and a gauge pressure counts from the atmosphere of the site', () => {
    const seaLevel = typedPressure('100 psi', at())
    const high = typedPressure('100 psig', at('5000 ft'))
    if (!seaLevel.ok || !high.ok) throw new Error('not read')
    expect(seaLevel.value).toBeCloseTo(689_475.7 + 101_325, 0)
    expect(seaLevel.value - high.value).toBeCloseTo(101_325 - at('5000 ft').si, 6)
  })

  test('[property] takes an absolute pressure as it is, at any altitude', () => {
    expect(typedPressure('500 kPa a', at('5000 ft'))).toEqual({ ok: true, value: 500_000 })
  })

  test('[limit] is a problem without a unit, and below a vacuum', () => {
    expect(typedPressure('118', at())).toMatchObject({ error: { kind: 'unreadable', field: 'pressure', value: '118' } })
    expect(typedPressure('-20 psig', at())).toMatchObject({ error: { kind: 'out-of-range', field: 'pressure' } })
  })
})

test('[property] a temperature flag is a point, not a difference', () => {
  expect(typedTemperature('40 degF', 'temperature')).toMatchObject({ value: expect.closeTo(277.594, 3) })
  expect(typedTemperature('-3 °C', 'temperature')).toMatchObject({ value: expect.closeTo(270.15, 9) })
})

test('[property] a share is a number or a percentage', () => {
  expect(typedShare('0.2', 'lost')).toEqual({ ok: true, value: 0.2 })
  expect(typedShare(' 20 % ', 'lost')).toEqual({ ok: true, value: 0.2 })
})

test.each(['', ' ', '%', 'half', '1/2', 'NaN', 'Infinity', '1.2.3', '20 % 3'])(
  '[limit] share %j is a problem',
  (text) => {
    expect(typedShare(text, 'lost')).toMatchObject({ ok: false, error: { field: 'lost', value: text } })
  },
)
