import { fail, ok, type Problem, type Result } from '@chargewright/quantity'
import { type DewUnit, toKelvin } from './dew-unit.ts'
import { type RatedQuantity, siPerUnit } from './rated-quantity.ts'
import { readGrid } from './read-grid.ts'
import type { SystemCurve } from './system-curve.ts'

/**
 * Reads the maker's curve of a whole system as a grid: a heading of box temperatures, then one line for each outdoor
 * temperature with the values under them, none left out.
 *
 * @param unit of the values, one of the units of `what`
 * @param temperatureUnit of heading and lines
 * @returns the curve; else the first cell that is missing or cannot be read
 */
export function readSystemCurve(
  text: string,
  what: RatedQuantity,
  unit: string,
  temperatureUnit: DewUnit,
): Result<SystemCurve, Problem> {
  const perUnit = siPerUnit(what, unit)
  if (perUnit === undefined) {
    return fail({ kind: 'unknown', field: `unit of the ${what}`, value: unit, accepted: 'a unit of it' })
  }
  const grid = readGrid(text, 'performance curve of the system')
  if (!grid.ok) return grid
  const { columns, rows } = grid.value
  const hole = rows.findIndex(({ values }) => values.includes(undefined))
  if (hole >= 0) {
    const field = `performance curve of the system, line ${hole + 2}`
    return fail({ kind: 'missing', field, value: 'nothing', accepted: 'a value under each box temperature' })
  }
  return ok({
    what,
    outdoor_K: rows.map(({ head }) => toKelvin(head, temperatureUnit)),
    box_K: columns.map((t) => toKelvin(t, temperatureUnit)),
    values: rows.map(({ values }) => values.map((value) => value! * perUnit)),
  })
}
