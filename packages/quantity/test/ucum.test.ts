import { UcumLhcUtils } from '@lhncbc/ucum-lhc'
import { describe, expect, test } from 'vitest'
import type { Dimension } from '../src/quantity.ts'
import { fromSi, toSi, type Unit } from '../src/unit.ts'
import { UNITS } from '../src/unit-table.ts'

// Oracle: @lhncbc/ucum-lhc 7.1.10, the UCUM tables of the U.S. National Library of Medicine.
const ucum = UcumLhcUtils.getInstance()

/** UCUM code of the SI unit in which each dimension is stored. Gauge pressure has no code in UCUM. */
const SI_CODE: Readonly<Partial<Record<Dimension, string>>> = {
  'absolute pressure': 'Pa',
  'pressure difference': 'Pa',
  temperature: 'K',
  'temperature difference': 'K',
  mass: 'kg',
  length: 'm',
  'mass per length': 'kg/m',
  elevation: 'm',
  volume: 'm3',
  airflow: 'm3/s',
  velocity: 'm/s',
  'mass flow': 'kg/s',
  power: 'W',
  'cooling capacity': 'W',
  'specific enthalpy': 'J/kg',
  current: 'A',
  voltage: 'V',
  'relative humidity': '1',
  duration: 's',
}

/**
 * Relative tolerance. Exact units agree to rounding. UCUM takes a column of mercury as 133.322 kPa/m exactly, six
 * digits of the torr (101 325/760 Pa) and of the conventional inch of mercury, hence 3·10⁻⁶ and 3.1·10⁻⁶.
 */
const ROUNDED_IN_UCUM: Readonly<Record<string, number>> = { 'um[Hg]': 3e-6, "[in_i'Hg]": 3.1e-6 }
const EXACT = 1e-9

const coded = UNITS.filter((unit): unit is Unit & { ucum: string } => unit.ucum !== undefined)

describe.each(coded)('$symbol ($dimension) is $ucum', (unit) => {
  const si = SI_CODE[unit.dimension]!
  const tolerance = ROUNDED_IN_UCUM[unit.ucum] ?? EXACT

  test.each([1, 72, 1234.5])('[oracle] %f converts to SI', (value) => {
    const theirs = ucum.convertUnitTo(unit.ucum, value, si).toVal!
    expect(Math.abs(toSi(value, unit) / theirs - 1)).toBeLessThan(tolerance)
  })

  test.each([0.5, 300, 101_325])('[oracle] %f in SI converts back', (value) => {
    const theirs = ucum.convertUnitTo(si, value, unit.ucum).toVal!
    expect(Math.abs(fromSi(value, unit) - theirs)).toBeLessThan(tolerance * Math.max(Math.abs(theirs), 1))
  })
})

test('[oracle] every unit has a code, except gauge pressures and the units UCUM does not know', () => {
  const without = UNITS.filter((unit) => unit.ucum === undefined && unit.dimension !== 'gauge pressure')
  expect(without.map((unit) => unit.symbol)).toEqual(['CFM per ton', 'm³/h per kW', 'ton'])
})
