import { fail, ok, type Problem, type Result } from '@chargewright/quantity'
import { t } from '../words/t.ts'

/** A table of text: its head, and the rows that have as many cells. */
export interface TextTable {
  readonly head: readonly string[]
  readonly rows: readonly (readonly string[])[]
  /** Reads a cell; NaN for one that holds no number. */
  readonly numberOf: (cell: string) => number
}

const SEPARATORS = ['\t', ';', ',', '|'] as const
/** More rows than a day of seconds are no visit. */
const MOST_ROWS = 100_000
/** Lines by which separator and decimal mark are found. */
const LOOKED_AT = 50

/**
 * Reads a table out of what a logger wrote or a spreadsheet copied: separator and decimal mark are told from the text,
 * lines before the head are skipped, and a line of units below the head is read as part of it.
 */
export function readTable(text: string): Result<TextTable, Problem> {
  const lines = text
    .replace(/^\uFEFF/, '')
    .split(/\r\n|\r|\n/)
    .filter((line) => line.trim() !== '')
  if (lines.length > MOST_ROWS) return fail(unreadable(t('{0} lines', lines.length), t('at most {0} lines', MOST_ROWS)))
  const separator = separatorOf(lines.slice(0, LOOKED_AT))
  if (!separator) return fail(unreadable(lines[0] ?? 'nothing', 'columns parted by comma, semicolon, tab or bar'))
  const cells = lines.map((line) => cellsOf(line, separator))
  const width = mostCommon(cells.slice(0, LOOKED_AT).map((row) => row.length))
  const numberOf = numberReader(cells.slice(0, LOOKED_AT).flat(), separator)
  const isData = (row: readonly string[]) => row.some((cell) => !Number.isNaN(numberOf(cell)))
  const table = cells.filter((row) => row.length === width)
  const first = table.findIndex(isData)
  if (first === -1) return fail(unreadable(lines[0] ?? 'nothing', 'at least one line with numbers'))
  const above = table.slice(Math.max(0, first - 2), first)
  const head = Array.from({ length: width }, (_, i) => {
    const words = above.map((row) => row[i]!.trim()).filter((word) => word !== '')
    return words.join(' ') || t('Column {0}', i + 1)
  })
  return ok({ head: distinct(head), rows: table.slice(first), numberOf })
}

/** The separator that parts most lines into one and the same number of cells. */
function separatorOf(lines: readonly string[]): string | undefined {
  const scored = SEPARATORS.map((separator) => {
    const widths = lines.map((line) => cellsOf(line, separator).length)
    const width = mostCommon(widths.filter((each) => each > 1))
    return { separator, width, lines: widths.filter((each) => each === width).length }
  }).filter(({ width }) => width > 1)
  // A decimal comma parts as evenly as a separator does; the real one is named first.
  return scored.toSorted((a, b) => b.lines - a.lines)[0]?.separator
}

/** The cells of a line; between quotation marks a separator is none, and two marks stand for one. */
function cellsOf(line: string, separator: string): readonly string[] {
  if (!line.includes('"')) return line.split(separator).map((cell) => cell.trim())
  const cells: string[] = []
  let [cell, quoted] = ['', false]
  for (let i = 0; i < line.length; i++) {
    const sign = line[i]!
    if (sign === '"' && quoted && line[i + 1] === '"') {
      cell += '"'
      i++
    } else if (sign === '"') quoted = !quoted
    else if (sign === separator && !quoted) {
      cells.push(cell.trim())
      cell = ''
    } else cell += sign
  }
  return [...cells, cell.trim()]
}

/** A comma is the decimal mark where it parts no cells and more cells have it than have a point. */
function numberReader(cells: readonly string[], separator: string): (cell: string) => number {
  const with_ = (mark: string) => cells.filter((cell) => new RegExp(`^[-−+]?\\d+\\${mark}\\d+$`).test(cell)).length
  const comma = separator !== ',' && with_(',') > with_('.')
  return (cell) => {
    const plain = cell.replace('−', '-').replace(/[\s\u00a0\u202f]/g, '')
    const text = comma ? plain.replaceAll('.', '').replace(',', '.') : plain
    return /^[-+]?(\d+\.?\d*|\.\d+)(e[-+]?\d+)?$/i.test(text) ? Number(text) : Number.NaN
  }
}

function mostCommon(widths: readonly number[]): number {
  const count = new Map<number, number>()
  for (const width of widths) count.set(width, (count.get(width) ?? 0) + 1)
  return [...count].toSorted(([a, n], [b, m]) => m - n || b - a)[0]?.[0] ?? 0
}

/** Two columns of one name are told apart by their number. */
function distinct(head: readonly string[]): readonly string[] {
  return head.map((name, i) => (head.indexOf(name) === i ? name : `${name} (${i + 1})`))
}

const unreadable = (value: string, accepted: string): Problem => ({
  kind: 'unreadable',
  field: 'table',
  value: value.slice(0, 60),
  accepted,
})
