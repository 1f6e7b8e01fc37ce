import { describe, expect, test } from 'vitest'
import { parse } from './parse.ts'
import type { Dimension } from './quantity.ts'
import { findUnit } from './unit.ts'

const PSI = 6894.757293168 // lb·g/in², exact to these digits
const OZ = 0.45359237 / 16

function read(text: string, accepted: Dimension | readonly Dimension[]) {
  const result = parse(text, accepted)
  if (!result.ok) throw new Error(`${text}: ${result.error.kind}`)
  return result.value
}

const problemOf = (text: string, accepted: Dimension | readonly Dimension[]) => {
  const result = parse(text, accepted)
  return result.ok ? undefined : result.error
}

describe('what technicians type', () => {
  test.each<[string, Dimension, number]>([
    ['72 psig', 'gauge pressure', 72 * PSI],
    ['72psi', 'gauge pressure', 72 * PSI],
    ['72 PSI(g)', 'gauge pressure', 72 * PSI],
    ['4,9 bar', 'gauge pressure', 490_000],
    ['0,49 MPa', 'gauge pressure', 490_000],
    ['29.5 inHg vac', 'gauge pressure', -29.5 * 3386.389],
    ['10" Hg', 'gauge pressure', -10 * 3386.389],
    ['500 micron', 'absolute pressure', 500 * (101_325 / 760_000)],
    ['29.92 inHg', 'absolute pressure', 29.92 * 3386.389],
    ['1013.25 hPa', 'absolute pressure', 101_325],
    ['0.5 in. w.c.', 'pressure difference', 0.5 * 249.08891],
    ['-3 °C', 'temperature', 270.15],
    ['−3 °C', 'temperature', 270.15],
    ['- 3 C', 'temperature', 270.15],
    ['40 degF', 'temperature', 277.594444],
    ['10 °F', 'temperature difference', 10 / 1.8],
    ['5 °C', 'temperature difference', 5],
    ['14 lb 6 oz', 'mass', 230 * OZ],
    ['14lb6oz', 'mass', 230 * OZ],
    ['14 lbs, 6 oz.', 'mass', 230 * OZ],
    ['14# 6 oz', 'mass', 230 * OZ],
    ['0 lb 6¼ oz', 'mass', 6.25 * OZ],
    ['6.25 oz', 'mass', 6.25 * OZ],
    ['6 1/4 oz', 'mass', 6.25 * OZ],
    ['6¼oz', 'mass', 6.25 * OZ],
    ['1 200 g', 'mass', 1.2],
    ['1.2e3g', 'mass', 1.2],
    ['3 kg 200 g', 'mass', 3.2],
    ["3'", 'length', 0.9144],
    ['3\' 4"', 'length', 1.016],
    ['3’ 4½”', 'length', 1.0287],
    ['3 ft 4 in', 'length', 1.016],
    ['5/8"', 'length', 0.015875],
    ['1 1/8 in', 'length', 0.028575],
    ['0.6 oz/ft', 'mass per length', 0.055806],
    ['5280 ft', 'elevation', 1609.344],
    ['3 ton', 'cooling capacity', 10_550.5585262],
    ['36000 BTUH', 'cooling capacity', 10_550.5585262],
    ['400 CFM/ton', 'specific airflow', (400 * 0.000471947443) / 3516.8528421],
    ['45 %', 'relative humidity', 0.45],
    ['1 h 20 min', 'duration', 4800],
    ['1hr20min', 'duration', 4800],
    ['208 V', 'voltage', 208],
  ])('[property] %s as %s', (text, dimension, si) => {
    const q = read(text, dimension)
    expect(q.dimension).toBe(dimension)
    expect(Math.abs(q.si - si)).toBeLessThan(1e-6 * Math.max(1, Math.abs(si)))
    expect(q.u).toBeUndefined()
  })
})

describe('one field, several dimensions', () => {
  const pressure = ['gauge pressure', 'absolute pressure'] as const

  test('[property] a bare unit is the first dimension named, a marked one its own', () => {
    expect(read('72 psi', pressure).dimension).toBe('gauge pressure')
    expect(read('72 psia', pressure).dimension).toBe('absolute pressure')
    expect(read('500 microns', pressure).dimension).toBe('absolute pressure')
    expect(read('10 inHg', pressure).dimension).toBe('gauge pressure')
  })

  test('[property] gauge, absolute and difference are never taken for each other', () => {
    expect(problemOf('72 psig', 'absolute pressure')?.kind).toBe('unreadable')
    expect(problemOf('72 psi', 'absolute pressure')?.kind).toBe('unreadable')
    expect(problemOf('72 psia', 'gauge pressure')?.kind).toBe('unreadable')
    expect(problemOf('72 psig', 'pressure difference')?.kind).toBe('unreadable')
  })

  test('[property] two amounts must be of one dimension, the larger unit first', () => {
    const either = ['mass', 'length'] as const
    expect(read('3 ft 6 in', either).dimension).toBe('length')
    for (const text of ['3 ft 6 oz', '3 lb 6 in', '6 oz 3 lb', '3 lb 6 lb']) {
      expect(problemOf(text, either)?.kind, text).toBe('unreadable')
    }
  })
})

describe('what is asked about', () => {
  test('[property] 1,234 g: both readings are offered', () => {
    expect(problemOf('1,234 g', 'mass')).toEqual({
      kind: 'ambiguous',
      field: 'mass',
      value: '1,234 g',
      accepted: '1234 g or 1.234 g',
    })
  })

  test('[property] 1,234 inside two amounts is asked about too', () => {
    expect(problemOf('1,234 lb 6 oz', 'mass')).toMatchObject({ kind: 'ambiguous', accepted: '1234 lb or 1.234 lb' })
    expect(problemOf('1 lb 1,234 oz', 'mass')).toMatchObject({ kind: 'ambiguous', accepted: '1234 oz or 1.234 oz' })
  })

  test('[property] a negative vacuum can mean either side of the atmosphere', () => {
    expect(problemOf('-10 inHg', 'gauge pressure')).toMatchObject({
      kind: 'ambiguous',
      accepted: '10 inHg vac or a gauge pressure',
    })
  })
})

describe('a keypad with a unit key', () => {
  const assume = findUnit('psig', 'gauge pressure')!

  test('[property] a bare number takes the assumed unit; a typed unit wins over it', () => {
    const si = (text: string) => {
      const result = parse(text, 'gauge pressure', { assume })
      return result.ok ? result.value.si : Number.NaN
    }
    expect(si('72')).toBeCloseTo(72 * PSI, 3)
    expect(si('4.9 bar')).toBeCloseTo(490_000, 3)
  })

  test('[limit] a bare number without an assumed unit is not guessed', () => {
    expect(problemOf('72', 'gauge pressure')?.kind).toBe('unreadable')
  })
})

describe('problems', () => {
  test('[limit] an unreadable value is quoted with the units that would do', () => {
    expect(parse('warm', 'temperature', { field: 'suction line' })).toEqual({
      ok: false,
      error: {
        kind: 'unreadable',
        field: 'suction line',
        value: 'warm',
        accepted: 'a number with a unit: °F, °C, K',
      },
    })
  })

  test('[limit] a value out of range is repeated as typed, with the range in its unit', () => {
    expect(problemOf('-500 °F', 'temperature')).toEqual({
      kind: 'out-of-range',
      field: 'temperature',
      value: -500,
      min: -459.67,
      max: 3140.33,
      unit: '°F',
    })
    expect(problemOf('40 inHg vac', 'gauge pressure')).toMatchObject({ value: 40, unit: 'inHg vac', max: 32.483 })
    expect(problemOf('101 %', 'relative humidity')).toMatchObject({ value: 101, min: 0, max: 100, unit: '%' })
    expect(problemOf('-14 lb 6 oz', 'mass')).toMatchObject({ kind: 'out-of-range', value: -14, unit: 'lb' })
  })

  test.each(['', ' ', '72 psig 5', '4-5 psig', '12:30 h', '10² g', '72 furlongs', '°C', '1e999 g', '3 ft 4 in 5'])(
    '[limit] “%s” is no quantity',
    (text) => {
      expect(problemOf(text, ['gauge pressure', 'mass', 'length', 'duration', 'temperature'])?.kind).toBe('unreadable')
    },
  )
})
