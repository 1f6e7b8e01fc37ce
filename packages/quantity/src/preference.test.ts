import { expect, test } from 'vitest'
import { INCH_POUND, METRIC, preferredUnit } from './preference.ts'
import { findUnit, unitsOf } from './unit.ts'
import { UNITS } from './unit-table.ts'

test('[property] both systems name units that exist, by their symbol', () => {
  for (const preference of [INCH_POUND, METRIC]) {
    for (const dimension of new Set(UNITS.map((unit) => unit.dimension))) {
      const symbol = preference[dimension] ?? unitsOf(dimension)[0]!.symbol
      expect(preferredUnit(dimension, preference).symbol).toBe(symbol)
      expect(findUnit(symbol, dimension)).toBe(preferredUnit(dimension, preference))
    }
  }
})
