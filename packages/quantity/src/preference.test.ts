import { expect, test } from 'vitest'
import { INCH_POUND, METRIC, POUNDS_AND_OUNCES, preferredUnit, shownUnit } from './preference.ts'
import { quantity } from './quantity.ts'
import { findUnit, unitsOf } from './unit.ts'
import { UNITS } from './unit-table.ts'

test('[property] both systems name units that exist, by their symbol', () => {
  for (const preference of [INCH_POUND, METRIC]) {
    for (const dimension of new Set(UNITS.map((unit) => unit.dimension))) {
      const named = preference[dimension] ?? unitsOf(dimension)[0]!.symbol
      const symbol = named === POUNDS_AND_OUNCES ? 'oz' : named
      expect(preferredUnit(dimension, preference).symbol).toBe(symbol)
      expect(findUnit(symbol, dimension)).toBe(preferredUnit(dimension, preference))
    }
  }
})

test('[property] a vacuum is shown in its own unit where one is preferred, and only below the atmosphere', () => {
  const compound = { ...INCH_POUND, vacuum: 'inHg vac' }
  expect(shownUnit(quantity('gauge pressure', -5e4), compound).symbol).toBe('inHg vac')
  expect(shownUnit(quantity('gauge pressure', 0), compound).symbol).toBe('psig')
  expect(shownUnit(quantity('gauge pressure', -5e4), INCH_POUND).symbol).toBe('psig')
  expect(shownUnit(quantity('absolute pressure', 5e4), compound).symbol).toBe('psia')
})
