import { describe, expect, it } from 'vitest'
import { computed } from '../../test/computed.ts'
import { buildTable } from './build-table.ts'
import { cell, columnPlace, holds, rowPlace, shareAt } from './grid.ts'

const built = buildTable(computed('R-454B'))
if (!built.ok) throw new Error(JSON.stringify(built.error))
const table = built.value

describe('grid of a table', () => {
  it('[property] the share at a column leads back to that column, on every surface', () => {
    for (const surface of [table.liquid, table.vapour, table.dome!]) {
      const cells = surface.columns - 1
      for (let column = 0; column <= cells; column++) {
        const share = shareAt(column / cells, surface.stretch)
        expect(columnPlace(surface, share * 5e4, 5e4)).toBeCloseTo(column, 10)
      }
      expect(shareAt(0, surface.stretch)).toBe(0)
      expect(shareAt(1, surface.stretch)).toBeCloseTo(1, 15)
    }
  })

  it('[property] columns stand closest at the saturation line', () => {
    const { columns, stretch } = table.vapour
    const shares = Array.from({ length: columns }, (_, k) => shareAt(k / (columns - 1), stretch))
    const steps = shares.slice(1).map((share, k) => share - shares[k]!)
    for (const [k, step] of steps.slice(1).entries()) expect(step).toBeGreaterThan(steps[k]!)
  })

  it('[limit] the highest pressure is the first row, the lowest one the last, and both belong to a cell', () => {
    const { minPressure_Pa, maxPressure_Pa, rows } = table
    const first = rowPlace(table, maxPressure_Pa)
    const last = rowPlace(table, minPressure_Pa)
    expect(first).toBeCloseTo(0, 9)
    expect(last).toBeCloseTo(rows - 1, 9)
    expect(cell(first, rows - 1)).toBe(0)
    expect(cell(last, rows - 1)).toBe(rows - 2)
    expect([minPressure_Pa, maxPressure_Pa].every((p) => holds(table, p))).toBe(true)
    for (const p of [minPressure_Pa * 0.999, maxPressure_Pa * 1.001, Number.NaN]) expect(holds(table, p)).toBe(false)
  })
})
