import { fail, ok, type Problem, type Result } from '@chargewright/quantity'
import { readCells } from './csv-cells.ts'
import { readNumber } from './plain-number.ts'

/** A table with one number over each column, one before each row, and a value or nothing in each cell. */
export interface NumberGrid {
  readonly columns: readonly number[]
  readonly rows: readonly { readonly head: number; readonly values: readonly (number | undefined)[] }[]
}

/**
 * Reads a grid from CSV. The first cell of the heading is left alone; a cell that is empty or a dash holds nothing.
 *
 * @param field what the table is, for the problem
 * @returns the grid; else the first cell that cannot be read
 */
export function readGrid(text: string, field: string): Result<NumberGrid, Problem> {
  const table = readCells(text, field)
  if (!table.ok) return table
  const [heading = [], ...lines] = table.value
  const columns = heading.slice(1).map(readNumber)
  const badColumn = columns.indexOf(undefined)
  if (badColumn >= 0) return fail(unreadable(`${field}, heading`, heading[badColumn + 1]!))
  const rows: NumberGrid['rows'][number][] = []
  for (const [row, [first = '', ...cells]] of lines.entries()) {
    const line = `${field}, line ${row + 2}`
    const head = readNumber(first)
    if (head === undefined) return fail(unreadable(`${line}, first cell`, first))
    if (cells.length > columns.length) {
      return fail(
        unreadable(line, `${cells.length} values`, `at most ${columns.length}, one under each of the heading`),
      )
    }
    const bad = cells.find((cell) => !EMPTY.test(cell) && readNumber(cell) === undefined)
    if (bad !== undefined) return fail(unreadable(line, bad))
    rows.push({ head, values: columns.map((_, i) => readNumber(cells[i] ?? '')) })
  }
  return ok({ columns: columns as readonly number[], rows })
}

const EMPTY = /^[-–—]?$/

function unreadable(field: string, value: string, accepted = 'a number'): Problem {
  return { kind: 'unreadable', field, value: value.length > 60 ? `${value.slice(0, 60)}…` : value, accepted }
}
