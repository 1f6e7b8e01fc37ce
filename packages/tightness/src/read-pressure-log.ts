import { fail, findUnit, type Problem, parse, type Result, type Unit } from '@chargewright/quantity'
import { vacuumText } from '@chargewright/visit'
import { type ElapsedTime, elapsedTime } from './elapsed-time.ts'
import { type LogEntry, type PressureLog, pressureLog } from './pressure-log.ts'

/**
 * Reads a log as it was typed or exported: one reading a line, time and pressure set apart by a comma, a semicolon or
 * a tab. A first line whose second field is no pressure is a heading; a unit in it (`time,pressure (micron)`,
 * `time,Pa`) is that of bare numbers. Plain Pa, hPa, kPa and mbar are absolute. Further fields on a line are left alone; so are empty lines.
 *
 * @param text at most two million characters
 * @param assume unit of bare numbers where no heading names one
 * @returns the log; else the first line that cannot be read, with what would be accepted
 */
export function readPressureLog(text: string, assume?: Unit): Result<PressureLog, Problem> {
  if (text.length > MAX_CHARACTERS) {
    const value = `${text.length} characters`
    return fail({ kind: 'unreadable', field: 'pressure log', value, accepted: `at most ${MAX_CHARACTERS} characters` })
  }
  const lines = text
    .replace(/^\uFEFF/, '')
    .split(/\r\n|\n|\r/)
    .map((line, i) => ({ number: i + 1, cells: cells(line) }))
    .filter(({ cells }) => cells.some((cell) => cell !== ''))
  const [first, ...rest] = lines
  if (!first)
    return fail({ kind: 'missing', field: 'pressure log', value: 'nothing', accepted: 'lines of time and pressure' })
  const isHeading = !/^[-+]?[\d.,]/.test(first.cells[1] ?? '')
  const unit = (isHeading ? headingUnit(first.cells[1] ?? '') : undefined) ?? assume
  const entries: LogEntry[] = []
  let clock: ElapsedTime['clock'] | undefined
  for (const { number, cells } of isHeading ? rest : lines) {
    const time = elapsedTime(cells[0] ?? '', `line ${number}, time`)
    if (!time.ok) return time
    clock ??= time.value.clock
    if (time.value.clock !== clock) {
      return fail({
        kind: 'unreadable',
        field: `line ${number}, time`,
        value: cells[0]!.slice(0, 60),
        accepted: `${clock}, as in the lines before`,
      })
    }
    const field = `line ${number}, pressure`
    const pressure = parse(vacuumText(cells[1] ?? ''), 'absolute pressure', unit ? { field, assume: unit } : { field })
    if (!pressure.ok) return pressure
    entries.push({ elapsed_s: time.value.seconds, pressure_Pa: pressure.value.si })
  }
  return pressureLog(entries)
}

const MAX_CHARACTERS = 2_000_000

/** A comma parts the fields only where no semicolon or tab does, so that it can be a decimal comma there. */
function cells(line: string): readonly string[] {
  const separator = line.includes('\t') ? '\t' : line.includes(';') ? ';' : ','
  return line.split(separator).map((cell) => cell.trim().replace(/^"([^"]*)"$/, '$1'))
}

/** The unit a heading names: alone, or last, or in brackets. */
function headingUnit(heading: string): Unit | undefined {
  const words = heading
    .slice(0, 100)
    .split(/[\s()[\]]+/)
    .filter((word) => word !== '')
  return [heading, words.at(-1) ?? '', words.slice(-2).join(' ')]
    .map((w) => findUnit(vacuumText(w), 'absolute pressure'))
    .find((u) => u)
}
