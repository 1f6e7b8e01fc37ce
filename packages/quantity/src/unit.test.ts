import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { findUnit, fromSi, toSi, unitsOf } from './unit.ts'
import { UNITS } from './unit-table.ts'

const anyUnit = fc.constantFrom(...UNITS)

test('[property] back from SI returns what was typed', () => {
  fc.assert(
    fc.property(anyUnit, fc.double({ min: -1e6, max: 1e6, noNaN: true }), (unit, value) => {
      const allowed = 1e-12 * Math.max(1, Math.abs(value), Math.abs((unit.offset ?? 0) / unit.scale))
      expect(Math.abs(fromSi(toSi(value, unit), unit) - value)).toBeLessThanOrEqual(allowed)
    }),
    { seed: 1, numRuns: 10_000 },
  )
})

test('[property] every symbol and spelling finds its own unit, so no spelling means two units of one dimension', () => {
  for (const unit of UNITS) {
    for (const spelling of [unit.symbol, ...unit.spellings]) {
      expect(findUnit(spelling, unit.dimension), `${spelling} of ${unit.dimension}`).toBe(unit)
      expect(findUnit(spelling.toUpperCase(), unit.dimension), `${spelling} in capitals`).toBe(unit)
    }
  }
})

test('[property] a gauge unit and its absolute twin are equally large', () => {
  const twins = [
    ['psig', 'psia'],
    ['bar g', 'bar a'],
    ['kPa g', 'kPa a'],
    ['MPa g', 'MPa a'],
    ['Pa g', 'Pa a'],
  ] as const
  for (const [gauge, absolute] of twins) {
    expect(findUnit(gauge, 'gauge pressure')!.scale).toBe(findUnit(absolute, 'absolute pressure')!.scale)
  }
  expect(findUnit('inHg vac', 'gauge pressure')!.scale).toBe(-findUnit('inHg abs', 'absolute pressure')!.scale)
})

describe('conversion factors', () => {
  // NIST SP 811:2008, appendix B.8, digits as printed. Status REMEMBERED.
  test.each([
    ['psia', 'absolute pressure', 6.894757e3, 1e-6],
    ['inHg abs', 'absolute pressure', 3.386389e3, 1e-6],
    ['inH2O', 'pressure difference', 2.490889e2, 1e-6],
    ['lb', 'mass', 4.535924e-1, 1e-6],
    ['oz', 'mass', 2.834952e-2, 1e-6],
    ['CFM', 'airflow', 4.719474e-4, 1e-6],
    ['Btu/h', 'cooling capacity', 2.930711e-1, 1e-6],
    ['ton', 'cooling capacity', 3.516853e3, 1e-6],
    ['Btu/lb', 'specific enthalpy', 2.326e3, 1e-12],
  ] as const)('[published] one %s (%s) is %f', (symbol, dimension, si, printed) => {
    expect(Math.abs(findUnit(symbol, dimension)!.scale / si - 1)).toBeLessThan(printed)
  })

  test.each([
    ['°F', 32, 273.15],
    ['°F', 212, 373.15],
    ['°F', -459.67, 0],
    ['°C', 0, 273.15],
  ])('[published] %s: %f is %f K, by definition', (symbol, typed, kelvins) => {
    expect(toSi(typed, findUnit(symbol, 'temperature')!)).toBeCloseTo(kelvins, 10)
  })
})

test.each([
  ['℃', 'temperature', '°C'],
  ['º C', 'temperature', '°C'],
  ['˚f', 'temperature', '°F'],
  ['DEG. F', 'temperature', '°F'],
  ['in. w.c.', 'pressure difference', 'inH2O'],
  ['in. Hg vacuum', 'gauge pressure', 'inHg vac'],
  ['㎏', 'mass', 'kg'],
  ['ft3/min', 'airflow', 'CFM'],
  ['μmHg', 'absolute pressure', 'micron'],
  ['cc', 'volume', 'cm³'],
] as const)('[property] %s on a field of %s is %s', (spelling, dimension, symbol) => {
  expect(findUnit(spelling, dimension)?.symbol).toBe(symbol)
})

test('[limit] nothing, a bare degree sign and a spelling of 100 000 combining marks find no unit', () => {
  for (const spelling of ['', '°', ' . ', '\u0301\u0316'.repeat(50_000)]) {
    expect(findUnit(spelling, 'temperature')).toBeUndefined()
  }
})

test('[property] units are offered in the order of the table', () => {
  expect(unitsOf('temperature').map((unit) => unit.symbol)).toEqual(['°F', '°C', 'K'])
})
