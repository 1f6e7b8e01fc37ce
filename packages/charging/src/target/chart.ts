import { fail, ok, type Problem, type Result } from '@chargewright/quantity'
import type { MakersChart } from '@chargewright/visit'

/** A grid of values over two rising axes. `undefined` where no value is given. */
export interface Grid {
  readonly rows: readonly number[]
  readonly columns: readonly number[]
  readonly values: readonly (readonly (number | undefined)[])[]
}

/** What a grid says at a point: a value, none (an empty cell is touched), or nothing because the point lies outside. */
export type Lookup =
  | { readonly kind: 'value'; readonly value: number }
  | { readonly kind: 'no-value' }
  | { readonly kind: 'outside'; readonly axis: 'row' | 'column'; readonly min: number; readonly max: number }

/** Bilinear inside the grid, refused outside; a cell with an empty corner has no value, except exactly on a full edge. */
export function lookUp(grid: Grid, row: number, column: number): Lookup {
  const r = bracket(grid.rows, row)
  if (!r) return { kind: 'outside', axis: 'row', min: grid.rows[0]!, max: grid.rows.at(-1)! }
  const c = bracket(grid.columns, column)
  if (!c) return { kind: 'outside', axis: 'column', min: grid.columns[0]!, max: grid.columns.at(-1)! }
  const at = (i: number, j: number, weight: number) => (weight === 0 ? 0 : grid.values[i]?.[j])
  const a = at(r.low, c.low, (1 - r.share) * (1 - c.share))
  const b = at(r.low, c.high, (1 - r.share) * c.share)
  const d = at(r.high, c.low, r.share * (1 - c.share))
  const e = at(r.high, c.high, r.share * c.share)
  if (a === undefined || b === undefined || d === undefined || e === undefined) return { kind: 'no-value' }
  const value = (1 - r.share) * ((1 - c.share) * a + c.share * b) + r.share * ((1 - c.share) * d + c.share * e)
  return { kind: 'value', value }
}

/**
 * Standard uncertainty of the value at a point, from those of its coordinates: the grid is read again one standard
 * uncertainty to either side and the greater change counts (JCGM 100:2008, 5.1.3, note 2). A side without a value tells
 * nothing.
 */
export function spread(grid: Grid, row: number, uRow: number, column: number, uColumn: number): number {
  const here = lookUp(grid, row, column)
  if (here.kind !== 'value') return 0
  const change = (there: Lookup) => (there.kind === 'value' ? Math.abs(there.value - here.value) : 0)
  const alongRow = Math.max(change(lookUp(grid, row + uRow, column)), change(lookUp(grid, row - uRow, column)))
  const alongColumn = Math.max(change(lookUp(grid, row, column + uColumn)), change(lookUp(grid, row, column - uColumn)))
  return Math.hypot(alongRow, alongColumn)
}

interface Bracket {
  readonly low: number
  readonly high: number
  readonly share: number
}

/** Far more than a temperature can lose on its way into kelvin and back, far less than anyone reads. */
const ROUNDING = 1e-9

function bracket(axis: readonly number[], at: number): Bracket | undefined {
  const last = axis.length - 1
  // Else 95 °F, typed as it stands on the chart, would ask for the row beyond it too, or lie outside the last one.
  const x = axis.find((value) => Math.abs(value - at) < ROUNDING) ?? at
  if (!(x >= axis[0]! && x <= axis[last]!)) return undefined
  const high = Math.max(
    1,
    axis.findIndex((value) => value >= x),
  )
  const low = high - 1
  if (last === 0) return { low: 0, high: 0, share: 0 }
  return { low, high, share: (x - axis[low]!) / (axis[high]! - axis[low]!) }
}

/**
 * Reads a maker's chart as entered into a grid: rows are outdoor, columns indoor temperatures, in the chart's own unit.
 *
 * @returns the grid, or a problem that names the row and column: axes must rise, the grid must be full
 */
export function gridOf(chart: MakersChart): Result<Grid, Problem> {
  const table =
    chart.form === 'csv'
      ? fromCsv(chart.csv)
      : ok({
          rows: chart.outdoorTemperatures,
          columns: chart.indoorTemperatures,
          values: chart.superheat.map((row) => row.map((cell) => cell ?? undefined)),
        })
  if (!table.ok) return table
  const { rows, columns, values } = table.value
  return (
    notRising('outdoor temperatures', rows) ??
    notRising('indoor temperatures', columns) ??
    notFull(rows.length, columns.length, values) ??
    table
  )
}

function fromCsv(csv: string): Result<Grid, Problem> {
  const separator = csv.includes(';') ? ';' : csv.includes('\t') ? '\t' : ','
  const lines = csv.split(/\r?\n/).filter((line) => line.trim() !== '')
  const cells = lines.map((line) => line.split(separator).map((cell) => cell.trim()))
  const [head = [], ...body] = cells
  for (const [i, row] of cells.entries()) {
    for (const [j, cell] of row.entries()) {
      const isCorner = i === 0 && j === 0
      const isAxis = i === 0 || j === 0
      if (isCorner || (!isAxis && isEmpty(cell))) continue
      if (!Number.isFinite(number(cell, separator)) || cell === '') {
        const field = `maker's chart, line ${i + 1}, column ${j + 1}`
        return fail({
          kind: 'unreadable',
          field,
          value: cell,
          accepted: isAxis ? 'a temperature' : 'a number, or nothing',
        })
      }
    }
  }
  return ok({
    columns: head.slice(1).map((cell) => number(cell, separator)),
    rows: body.map((row) => number(row[0] ?? '', separator)),
    values: body.map((row) => row.slice(1).map((cell) => (isEmpty(cell) ? undefined : number(cell, separator)))),
  })
}

const isEmpty = (cell: string) => cell === '' || /^[-–—]+$/.test(cell)

/** A comma can be the decimal mark only where it does not part the cells. */
const number = (cell: string, separator: string) => Number(separator === ',' ? cell : cell.replace(',', '.'))

function notRising(name: string, axis: readonly number[]): Result<Grid, Problem> | undefined {
  const at = axis.findIndex((value, i) => !Number.isFinite(value) || (i > 0 && value <= axis[i - 1]!))
  if (axis.length >= 1 && at === -1) return undefined
  const accepted = 'at least one temperature, each higher than the one before'
  return fail({
    kind: 'unreadable',
    field: `maker's chart, ${name}`,
    value: axis.join(', ').slice(0, 60) || 'nothing',
    accepted,
  })
}

function notFull(rows: number, columns: number, values: Grid['values']): Result<Grid, Problem> | undefined {
  const short = values.findIndex((row) => row.length !== columns)
  if (values.length === rows && short === -1) return undefined
  const row = short === -1 ? rows : short
  const found = short === -1 ? `${values.length} rows` : `${values[short]?.length ?? 0} values`
  const accepted =
    short === -1 ? `${rows} rows, one per outdoor temperature` : `${columns} values, one per indoor temperature`
  return fail({ kind: 'unreadable', field: `maker's chart, row ${row + 1}`, value: found, accepted })
}
