import { describe, expect, test } from 'vitest'
import { COVERAGE, format, formatNumber } from './format.ts'
import { INCH_POUND, METRIC } from './preference.ts'
import { type Dimension, quantity } from './quantity.ts'
import { findUnit, toSi } from './unit.ts'

const OZ = 0.45359237 / 16
const GAP = '\u202f'

test.each<[Dimension, number, string, string]>([
  ['gauge pressure', 496_422.5, '72.0 psig', '4.96 bar g'],
  ['gauge pressure', -99_898.5, '−14.5 psig', '−1.00 bar g'],
  ['absolute pressure', 101_325, '14.7 psia', '1.01 bar a'],
  ['pressure difference', 24_908.9, '3.6 psi', '0.25 bar'],
  ['temperature', 270.15, '26.6 °F', '−3.0 °C'],
  ['temperature difference', 5.5556, '10.0 °F', '5.6 K'],
  ['mass', 230 * OZ, '14 lb 6 oz', `6520 g`],
  ['length', 1.016, '3.3 ft', '1.02 m'],
  ['mass per length', 0.0558, '0.60 oz/ft', '55.8 g/m'],
  ['elevation', 1609.344, '5280 ft', '1609 m'],
  ['volume', 0.0254 ** 3 * 12, '12.00 in³', '197 cm³'],
  ['airflow', 0.566337, '1200 CFM', '2039 m³/h'],
  ['specific airflow', 5.36783e-5, '400 CFM per ton', '193 m³/h per kW'],
  ['velocity', 2.54, '500 ft/min', '2.54 m/s'],
  ['mass flow', 0.05, '396.8 lb/h', '180.0 kg/h'],
  ['power', 2490, '2490 W', '2490 W'],
  ['cooling capacity', 10_550.56, '3.0 ton', '10.55 kW'],
  ['specific enthalpy', 250e3, '107.5 Btu/lb', '250.0 kJ/kg'],
  ['current', 11.26, '11.3 A', '11.3 A'],
  ['voltage', 208.4, '208 V', '208 V'],
  ['relative humidity', 0.45, '45 %', '45 %'],
  ['duration', 900, '15 min', '15 min'],
])('[property] %s %f is shown as %s and %s', (dimension, si, inchPound, metric) => {
  expect(format(quantity(dimension, si), INCH_POUND)).toBe(inchPound)
  expect(format(quantity(dimension, si), METRIC)).toBe(metric)
})

describe('masses in pounds and ounces', () => {
  test.each([
    [0, '0.0 oz'],
    [0.176, '0.18 oz'],
    [0.3, '0.3 oz'],
    [5.2512, '5.3 oz'],
    [6.25, '6.25 oz'],
    [15.94, '15.9 oz'],
    [15.96, '1 lb 0 oz'],
    [15.996, '1 lb 0 oz'],
    [16, '1 lb 0 oz'],
    [22.25, '1 lb 6.25 oz'],
    [31.999, '2 lb 0 oz'],
    [22.31, '1 lb 6.3 oz'],
    [159.94, '9 lb 15.9 oz'],
    [230.5, '14 lb 6.5 oz'],
    [230.37, '14 lb 6 oz'],
    [-19.75, '−1 lb 3.75 oz'],
    [16 * 12_345 + 1, `12${GAP}345 lb 1 oz`],
  ])('[property] %f oz is %s', (ounces, shown) => {
    expect(format(quantity('mass', ounces * OZ), INCH_POUND)).toBe(shown)
  })

  test('[property] preferred in ounces alone they stay ounces, a printed quarter with its digits', () => {
    const decimal = { mass: 'oz' }
    expect(format(quantity('mass', 22.25 * OZ), decimal)).toBe('22.25 oz')
    expect(format(quantity('mass', 22.31 * OZ), decimal)).toBe('22.3 oz')
  })

  test('[property] an uncertainty keeps them in ounces; asking for an unknown one does not', () => {
    expect(format(quantity('mass', 230 * OZ, 0.125 * OZ), INCH_POUND, true)).toBe('14 lb 6 oz ± 0.3 oz')
    expect(format(quantity('mass', 230 * OZ), INCH_POUND, true)).toBe('14 lb 6 oz')
    expect(format(quantity('mass', 122.6 * OZ, 0.15 * OZ), INCH_POUND, true)).toBe('7 lb 10.6 oz ± 0.3 oz')
    expect(format(quantity('mass', 4 * OZ, 0.15 * OZ), INCH_POUND, true)).toBe('4.0 ± 0.3 oz')
  })
})

describe('uncertainty', () => {
  test('[property] is expanded, and converts as a difference', () => {
    expect(COVERAGE).toBe(2)
    expect(format(quantity('temperature', 270.15, 0.5), METRIC, true)).toBe('−3.0 ± 1.0 °C')
    expect(format(quantity('temperature', 270.15, 0.5), INCH_POUND, true)).toBe('26.6 ± 1.8 °F')
  })

  test('[property] is positive for a vacuum, whose scale is negative', () => {
    const vacuum = { 'gauge pressure': 'inHg vac' }
    expect(format(quantity('gauge pressure', -99_898.5, 3386.389), vacuum, true)).toBe('29.5 ± 2.0 inHg vac')
  })

  test('[limit] is never rounded to nothing, and an exact value goes without', () => {
    const whole = { 'gauge pressure': 'kPa g' }
    expect(format(quantity('gauge pressure', 496_000, 10), whole, true)).toBe('496 ± 1 kPa g')
    expect(format(quantity('gauge pressure', 496_000, 0), whole, true)).toBe('496 kPa g')
  })

  test('[property] is shown only where it is asked for and known', () => {
    expect(format(quantity('temperature', 270.15, 0.5), METRIC)).toBe('−3.0 °C')
    expect(format(quantity('temperature', 270.15), METRIC, true)).toBe('−3.0 °C')
  })
})

test.each([
  [30, '30 s'],
  [60, '1 min'],
  [900, '15 min'],
  [7199, '120 min'],
  [7200, '2 h'],
  [9000, '2.5 h'],
  [86_400, '24 h'],
])('[property] a time of %f s is shown as %s, in a unit that is preferred in that one', (si, shown) => {
  expect(format(quantity('duration', si), INCH_POUND)).toBe(shown)
  expect(format(quantity('duration', si), { duration: 'min' })).toMatch(/ min$/)
})

describe('numbers', () => {
  const pascal = findUnit('Pa g', 'gauge pressure')!
  const celsius = findUnit('°C', 'temperature')!

  test.each([
    [9999, '9999'],
    [10_000, `10${GAP}000`],
    [-1_234_567, `−1${GAP}234${GAP}567`],
    [0.4, '0'],
    [-0.4, '0'],
    [-0, '0'],
  ])('[property] %f Pa is %s: set apart from five digits on, true minus, no negative zero', (value, shown) => {
    expect(formatNumber(quantity('gauge pressure', value), pascal)).toBe(shown)
  })

  test('[property] trailing zeros stay, so that a column lines up', () => {
    expect(formatNumber(quantity('temperature', toSi(21, celsius)), celsius)).toBe('21.0')
  })
})

test('[limit] a preference that names no unit of the dimension falls back on the first one offered', () => {
  expect(format(quantity('duration', 900), { duration: 'fortnight' })).toBe('15 min')
})
