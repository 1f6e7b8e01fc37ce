import { describe, expect, it } from 'vitest'
import { chiSquareAbove, normalBelow } from './normal.ts'

// Published: Abramowitz and Stegun 1964, table 26.1, REMEMBERED; the formula claims 7.5e-8.
const TABLE_26_1 = [
  { z: 0, below: 0.5 },
  { z: 1, below: 0.8413447461 },
  { z: -1.96, below: 0.0249978951 },
  { z: 3, below: 0.998650102 },
]
// Published: upper 5 % and 0.1 % points of chi-square, table 26.8 of the same, REMEMBERED.
const TABLE_26_8 = [
  { degrees: 4, value: 9.488, above: 0.05 },
  { degrees: 10, value: 18.307, above: 0.05 },
  { degrees: 10, value: 29.588, above: 0.001 },
]

describe('the normal distribution', () => {
  it.each(TABLE_26_1)('[published] below $z lies $below', ({ z, below }) => {
    expect(Math.abs(normalBelow(z) - below)).toBeLessThan(7.5e-8)
  })

  it.each(TABLE_26_8)('[published] of $degrees squares, $above lie above $value, to a tenth of that', (row) => {
    expect(Math.abs(chiSquareAbove(row.value, row.degrees) / row.above - 1)).toBeLessThan(0.1)
  })
})
