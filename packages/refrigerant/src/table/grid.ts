import type { PropertyTable, Surface } from './property-table.ts'

/** Whether a pressure lies in the range of a table; not a number does not. */
export function holds(table: PropertyTable, pressure: number): boolean {
  return pressure >= table.minPressure_Pa && pressure <= table.maxPressure_Pa
}

/** Where a pressure lies among the rows of a table, 0 at the first one. */
export function rowPlace(table: PropertyTable, pressure: number): number {
  return (Math.sqrt(table.lnCriticalPressure - Math.log(pressure)) - table.xiStart) * table.rowsPerXi
}

/** Where an enthalpy, so far beyond the saturation line of a region, lies among its columns. */
export function columnPlace({ columns, stretch }: Surface, beyond: number, range: number): number {
  return ((1 + stretch) * (columns - 1) * beyond) / (beyond + stretch * range)
}

/** The share of the enthalpy range at y, 0 … 1 along the columns: `columnPlace` the other way round. */
export function shareAt(y: number, stretch: number): number {
  return (stretch * y) / (1 + stretch - y)
}

/** The cell that a place lies in; the ends belong to the first and the last one. */
export function cell(place: number, cells: number): number {
  const k = place | 0
  return k < cells ? k : cells - 1
}
