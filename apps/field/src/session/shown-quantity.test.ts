import { INCH_POUND, METRIC, quantity } from '@chargewright/quantity'
import { describe, expect, test } from 'vitest'
import { namesItsUnit, shownQuantity } from './shown-quantity.ts'

describe('a quantity in its blank', () => {
  test('[property] number and unit stand apart, in the units of the device', () => {
    const line = quantity('temperature', 273.15)
    expect(shownQuantity(line, 'temperature', METRIC)).toEqual({ number: '0.0', unit: '°C' })
    expect(shownQuantity(line, 'temperature', INCH_POUND)).toEqual({ number: '32.0', unit: '°F' })
  })

  test('[property] pounds and ounces stay together', () => {
    expect(shownQuantity(quantity('mass', 1), 'mass', INCH_POUND)).toMatchObject({ unit: '' })
  })

  test('[limit] an empty blank has the unit that a bare number would take', () => {
    expect(shownQuantity(undefined, 'gauge pressure', METRIC)).toEqual({ number: '', unit: 'bar g' })
  })

  test('[property] a unit beside a text that names its own would be wrong', () => {
    for (const text of ['118 psig', '-3 °C', '14 lb 6 oz', '52 %']) expect(namesItsUnit(text)).toBe(true)
    for (const text of ['', '118', '-3,5', '6 1/4', '6¼', '1’200', '−3']) expect(namesItsUnit(text)).toBe(false)
  })
})
