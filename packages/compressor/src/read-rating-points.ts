import { ok, type Problem, type Result } from '@chargewright/quantity'
import { type DewUnit, toKelvin } from './dew-unit.ts'
import type { RatingPoint } from './fit-rating.ts'
import { readGrid } from './read-grid.ts'

/**
 * Reads a maker's table of a compressor as a grid: a heading of suction dew temperatures, then one line for each
 * discharge dew temperature with the values under them. A cell that is empty or a dash is no point.
 *
 *     discharge,30,40,45
 *     90,364.7,440.9,482.5
 *     100,359.9,436.9,479.0
 *
 * @param dewUnit unit of the temperatures in the grid
 * @returns the points; else the first cell that cannot be read
 */
export function readRatingPoints(text: string, dewUnit: DewUnit): Result<readonly RatingPoint[], Problem> {
  const grid = readGrid(text, 'rating table')
  if (!grid.ok) return grid
  const { columns, rows } = grid.value
  return ok(
    rows.flatMap(({ head, values }) =>
      values.flatMap((value, i) =>
        value === undefined
          ? []
          : [{ suctionDew_K: toKelvin(columns[i]!, dewUnit), dischargeDew_K: toKelvin(head, dewUnit), value }],
      ),
    ),
  )
}
