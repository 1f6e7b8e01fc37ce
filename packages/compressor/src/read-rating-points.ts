import { fail, ok, type Problem, type Result } from '@chargewright/quantity'
import { readCells } from './csv-cells.ts'
import { type DewUnit, toKelvin } from './dew-unit.ts'
import type { RatingPoint } from './fit-rating.ts'
import { readNumber } from './plain-number.ts'

/**
 * Reads a maker's table as a grid: a heading of suction dew temperatures, then one line for each discharge dew
 * temperature with the values under them. A cell left empty or with a dash is no point.
 *
 *     discharge \ suction,30,40,45
 *     90,364.7,440.9,482.5
 *     100,359.9,436.9,479.0
 *
 * @param dewUnit unit of the temperatures in the grid
 * @returns the points; else the first cell that cannot be read
 */
export function readRatingPoints(text: string, dewUnit: DewUnit): Result<readonly RatingPoint[], Problem> {
  const table = readCells(text, 'rating table')
  if (!table.ok) return table
  const [heading = [], ...lines] = table.value
  const suctions = heading.slice(1).map(readNumber)
  const badSuction = suctions.indexOf(undefined)
  if (badSuction >= 0) return fail(unreadable('suction temperature in the heading', heading[badSuction + 1]!))
  const points: RatingPoint[] = []
  for (const [row, [first = '', ...cells]] of lines.entries()) {
    const discharge = readNumber(first)
    if (discharge === undefined) return fail(unreadable(`line ${row + 2}, discharge temperature`, first))
    if (cells.length > suctions.length)
      return fail(unreadable(`line ${row + 2}`, `${cells.length} values`, suctions.length))
    for (const [column, cell] of cells.entries()) {
      if (/^[-–—]?$/.test(cell)) continue
      const value = readNumber(cell)
      if (value === undefined) return fail(unreadable(`line ${row + 2}, value ${column + 1}`, cell))
      const suctionDew_K = toKelvin(suctions[column]!, dewUnit)
      points.push({ suctionDew_K, dischargeDew_K: toKelvin(discharge, dewUnit), value })
    }
  }
  return ok(points)
}

function unreadable(field: string, value: string, most?: number): Problem {
  const accepted = most === undefined ? 'a number' : `at most ${most} values, one under each suction temperature`
  return { kind: 'unreadable', field, value: value.length > 60 ? `${value.slice(0, 60)}…` : value, accepted }
}
