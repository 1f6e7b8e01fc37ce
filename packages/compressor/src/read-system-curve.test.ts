import { describe, expect, test } from 'vitest'
import { toKelvin } from './dew-unit.ts'
import { readSystemCurve } from './read-system-curve.ts'

const F = (t: number) => toKelvin(t, '°F')
const GRID = 'outdoor,35,40\n80,2000,2100\n95,2400,2500'

test('[property] a grid is the curve, in SI', () => {
  const curve = readSystemCurve(GRID, 'capacity', 'Btu/h', '°F')
  if (!curve.ok) throw new Error(curve.error.field)
  expect(curve.value).toMatchObject({ what: 'capacity', outdoor_K: [F(80), F(95)], box_K: [F(35), F(40)] })
  // 12 000 Btu/h are 3516.85 W by the definition of the ton.
  expect(curve.value.values[0]![0]).toBeCloseTo((2000 * 3516.8528) / 12_000, 3)
})

describe('what is refused, and where', () => {
  test.each([
    ['a hole', GRID.replace('2500', '-'), 'power', 'W', 'performance curve of the system, line 3'],
    ['a word', GRID.replace('2500', 'much'), 'power', 'W', 'performance curve of the system, line 3'],
    ['a unit of something else', GRID, 'power', 'lb/h', 'unit of the power'],
    ['nothing', '', 'power', 'W', 'performance curve of the system'],
  ] as const)('[limit] %s', (_, text, what, unit, field) => {
    expect(readSystemCurve(text, what, unit, '°F')).toMatchObject({ ok: false, error: { field } })
  })
})
