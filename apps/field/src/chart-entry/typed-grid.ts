import { fail, ok, type Problem, type Result } from '@chargewright/quantity'
import type { MakersChart } from '@chargewright/visit'
import { t } from '../words/t.ts'

/**
 * A chart as it is typed: rows of texts, the indoor temperatures in the first row, the outdoor ones first in every other
 * row, the corner unused. It always has an empty row and an empty column to go on in.
 */
export type TypedGrid = readonly (readonly string[])[]

/** As many rows or columns as a chart may have, with the corner. */
const MOST = 201
const FEWEST_ROWS = 5
const FEWEST_COLUMNS = 4

export const EMPTY_GRID: TypedGrid = roomy([])

/** The grid with one cell changed. */
export const withCell = (grid: TypedGrid, row: number, column: number, text: string): TypedGrid =>
  withBlock(grid, row, column, [[text]])

/** The grid with a block of cells laid over it from one cell on, as a spreadsheet pastes it. */
export function withBlock(grid: TypedGrid, row: number, column: number, block: TypedGrid): TypedGrid {
  const height = Math.min(MOST, Math.max(grid.length, row + block.length))
  const width = Math.min(MOST, Math.max(widthOf(grid), column + widthOf(block)))
  return roomy(
    Array.from({ length: height }, (_, i) =>
      Array.from({ length: width }, (_, j) => block[i - row]?.[j - column] ?? grid[i]?.[j] ?? ''),
    ),
  )
}

/** A block of cells out of pasted text; undefined for a single cell, which is typed as it stands. */
export function blockOf(text: string): TypedGrid | undefined {
  const lines = text.replace(/\r?\n$/, '').split(/\r?\n/)
  const separator = text.includes('\t') ? '\t' : text.includes(';') ? ';' : ','
  // A comma in one line alone is a decimal mark as likely as not.
  if (lines.length === 1 && separator === ',') return undefined
  const block = lines.map((line) => line.split(separator).map((cell) => cell.trim()))
  return block.length > 1 || block[0]!.length > 1 ? block : undefined
}

/** The chart that the texts make: rows and columns in rising order, cells left empty where the maker gives no value. */
export function chartOfGrid(
  grid: TypedGrid,
  { indoor, unit }: Pick<MakersChart, 'indoor' | 'unit'>,
): Result<Extract<MakersChart, { form: 'grid' }>, Problem> {
  const columns = [...Array(widthOf(grid)).keys()].slice(1).filter((j) => grid.some((row) => isFilled(row[j])))
  const rows = [...grid.keys()].slice(1).filter((i) => grid[i]!.some(isFilled))
  if (rows.length === 0 || columns.length === 0) return fail(missing('temperatures and superheats of the chart'))
  const cell = (i: number, j: number) => grid[i]?.[j]?.trim() ?? ''
  for (const i of [0, ...rows]) {
    for (const j of [0, ...columns]) {
      if (i === 0 && j === 0) continue
      const [text, isAxis] = [cell(i, j), i === 0 || j === 0]
      if (text === '' && !isAxis) continue
      if (Number.isNaN(numberOf(text))) return fail(unreadable(i, j, text, isAxis))
    }
  }
  const [byRow, byColumn] = [
    rows.toSorted((a, b) => numberOf(cell(a, 0)) - numberOf(cell(b, 0))),
    columns.toSorted((a, b) => numberOf(cell(0, a)) - numberOf(cell(0, b))),
  ]
  const outdoorTemperatures = byRow.map((i) => numberOf(cell(i, 0)))
  const indoorTemperatures = byColumn.map((j) => numberOf(cell(0, j)))
  const twice = twiceIn(outdoorTemperatures) ?? twiceIn(indoorTemperatures)
  if (twice !== undefined)
    return fail({
      kind: 'unreadable',
      field: 'chart',
      value: t('{0} {1} twice', twice, unit),
      accepted: 'each temperature once',
    })
  const superheat = byRow.map((i) => byColumn.map((j) => (cell(i, j) === '' ? null : numberOf(cell(i, j)))))
  return ok({ form: 'grid', indoor, unit, outdoorTemperatures, indoorTemperatures, superheat })
}

/** The texts of a chart that is kept, to go on typing in. */
export function gridOfChart(chart: Extract<MakersChart, { form: 'grid' }>): TypedGrid {
  const head = ['', ...chart.indoorTemperatures.map(String)]
  const rows = chart.superheat.map((row, i) => [
    String(chart.outdoorTemperatures[i]),
    ...row.map((value) => (value === null ? '' : String(value))),
  ])
  return roomy([head, ...rows])
}

function roomy(grid: TypedGrid): TypedGrid {
  const lastRow = grid.findLastIndex((row) => row.some(isFilled))
  const lastColumn = Math.max(-1, ...grid.map((row) => row.findLastIndex(isFilled)))
  const height = Math.min(MOST, Math.max(FEWEST_ROWS, lastRow + 2))
  const width = Math.min(MOST, Math.max(FEWEST_COLUMNS, lastColumn + 2))
  return Array.from({ length: height }, (_, i) => Array.from({ length: width }, (_, j) => grid[i]?.[j] ?? ''))
}

const widthOf = (grid: TypedGrid): number => Math.max(0, ...grid.map((row) => row.length))
const isFilled = (text: string | undefined): boolean => text !== undefined && text.trim() !== ''

function numberOf(text: string): number {
  const plain = text
    .replace(/[−–]/, '-')
    .replace(',', '.')
    .replace(/\s*°?[FC]?$/i, '')
  return plain.trim() === '' ? Number.NaN : Number(plain)
}

const twiceIn = (axis: readonly number[]): number | undefined => axis.find((value, i) => axis.indexOf(value) !== i)

const missing = (field: string): Problem => ({
  kind: 'missing',
  field,
  value: 'nothing',
  accepted: 'at least one row and one column',
})

const unreadable = (row: number, column: number, text: string, isAxis: boolean): Problem => ({
  kind: text === '' ? 'missing' : 'unreadable',
  field: t('chart, row {0}, column {1}', row + 1, column + 1),
  value: text === '' ? 'nothing' : text,
  accepted: isAxis ? 'a temperature' : 'a number, or nothing',
})
