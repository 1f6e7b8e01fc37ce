import { fail, findUnit, ok, type Problem, type Quantity, quantity, type Result, toSi } from '@chargewright/quantity'

/** One line of a maker's table of airflow and pressure. */
export interface AirflowEntry {
  readonly airflow: Quantity<'airflow'>
  readonly pressure: Quantity<'pressure difference'>
}

const MOST_LINES = 1000

/**
 * A maker's table from CSV: a heading with two units, one of airflow and one of pressure (`CFM,inH2O`), and a line of
 * two numbers for each entry, in any order. Semicolon or tab part the cells where a comma is a decimal one.
 *
 * @returns the entries, pressure rising; else the first line that cannot be read
 */
export function readAirflowTable(text: string): Result<readonly AirflowEntry[], Problem> {
  const [heading, ...lines] = text
    .replace(/^\uFEFF/, '')
    .split(/\r\n|\n|\r/, MOST_LINES + 2)
    .filter((line) => line.trim() !== '')
  if (heading === undefined)
    return fail({
      kind: 'missing',
      field: 'table',
      value: 'nothing',
      accepted: 'a heading such as CFM,inH2O and lines of numbers under it',
    })
  if (lines.length > MOST_LINES) return fail(unreadable('table', 'more lines', `at most ${MOST_LINES} lines`))
  const separator = heading.includes('\t') ? '\t' : heading.includes(';') ? ';' : ','
  const names = heading.split(separator).map((cell) => cell.trim())
  const flowAt = names.findIndex((name) => findUnit(name, 'airflow'))
  const pressureAt = names.findIndex((name) => findUnit(name, 'pressure difference'))
  const flowUnit = findUnit(names[flowAt] ?? '', 'airflow')
  const pressureUnit = findUnit(names[pressureAt] ?? '', 'pressure difference')
  if (!flowUnit || !pressureUnit) {
    return fail(unreadable('table, heading', heading, 'a unit of airflow and one of pressure, such as CFM,inH2O'))
  }
  const entries: AirflowEntry[] = []
  for (const [i, line] of lines.entries()) {
    const cells = line.split(separator).map((cell) => plainNumber(cell, separator))
    const [flow, pressure] = [cells[flowAt], cells[pressureAt]]
    if (flow === undefined || pressure === undefined) {
      return fail(
        unreadable(`table, line ${i + 2}`, line, `a number of ${flowUnit.symbol} and one of ${pressureUnit.symbol}`),
      )
    }
    entries.push({
      airflow: quantity('airflow', toSi(flow, flowUnit)),
      pressure: quantity('pressure difference', toSi(pressure, pressureUnit)),
    })
  }
  return ok(entries.toSorted((a, b) => a.pressure.si - b.pressure.si))
}

function plainNumber(cell: string, separator: string): number | undefined {
  const typed = separator === ',' ? cell.trim() : cell.trim().replace(',', '.')
  return /^-?\d{1,9}(\.\d{1,9})?$/.test(typed) ? Number(typed) : undefined
}

function unreadable(field: string, value: string, accepted: string): Problem {
  return { kind: 'unreadable', field, value: value.slice(0, 60), accepted }
}
