import { cell, holds, rowPlace } from './grid.ts'
import { CURVE, type PropertyTable } from './property-table.ts'
import { inner, outer, weigh } from './spline.ts'

/** Temperature of the bubble point at a pressure, K; NaN outside the table. */
export function bubbleTemperature(table: PropertyTable, pressure: number): number {
  return saturation(table, CURVE.bubbleTemperature, pressure)
}

/** Temperature of the dew point at a pressure, K; NaN outside the table. */
export function dewTemperature(table: PropertyTable, pressure: number): number {
  return saturation(table, CURVE.dewTemperature, pressure)
}

/** One of the saturation curves at a pressure; NaN outside the table. */
export function saturation(table: PropertyTable, which: number, pressure: number): number {
  if (!holds(table, pressure)) return Number.NaN
  const down = rowPlace(table, pressure)
  const row = cell(down, table.rows - 1)
  const t = down - row
  return weigh(table.curves, which * (table.rows + 2) + row, outer(1 - t), inner(t), inner(1 - t), outer(t))
}
