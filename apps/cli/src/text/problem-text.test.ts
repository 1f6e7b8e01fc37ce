import { expect, test } from 'vitest'
import { problemText } from './problem-text.ts'

test('[property] a range in pascals or kelvins is told in the units of both trades as well', () => {
  const pressure = { kind: 'out-of-range', field: 'pressure', value: 1, min: 101_325, max: 1e6, unit: 'Pa' } as const
  expect(problemText(pressure)).toBe(
    'pressure: 1 Pa is outside 101325 to 1000000 Pa (14.7 psia to 145.0 psia, 1.01 bar a to 10.00 bar a)',
  )
  const temperature = {
    kind: 'out-of-range',
    field: 'temperature',
    value: 1,
    min: 273.15,
    max: 373.15,
    unit: 'K',
  } as const
  expect(problemText(temperature)).toContain('(32.0 °F to 212.0 °F, 0.0 °C to 100.0 °C)')
})

test('[property] any other problem is its own sentence', () => {
  const problem = { kind: 'missing', field: 'pressure', value: 'nothing', accepted: 'a pressure' } as const
  expect(problemText(problem)).toBe('pressure: missing; expected a pressure')
})
