import { fail, ok, type Problem, type Result } from '@chargewright/quantity'
import { readTable, type TextTable } from './read-table.ts'
import type { Column, Recording } from './recording.ts'

/** Where a log says no times, its rows are taken to be so far apart. */
const APART_S = 1
const DAY_S = 86_400

/** A log of instruments out of the text of a file or of the clipboard. */
export function recordingOfText(name: string, text: string): Result<Recording, Problem> {
  const table = readTable(text)
  if (!table.ok) return table
  const { head, rows, numberOf } = table.value
  const times = timesOf(table.value)
  const columns: readonly Column[] = head.flatMap((header, i) => {
    if (i === times.column || isClock(rows.map((row) => row[i]!))) return []
    const samples = rows.flatMap((row, j) => {
      const [number, time_s] = [numberOf(row[i]!), times.seconds[j]!]
      return Number.isNaN(number) || Number.isNaN(time_s) ? [] : [{ time_s, number }]
    })
    return samples.length === 0 ? [] : [{ header, instrument: name, samples: rising(samples) }]
  })
  if (columns.length > 0) return ok({ name, columns })
  const accepted = 'at least one column of numbers beside the time'
  return fail({ kind: 'unreadable', field: 'table', value: head.join(', ').slice(0, 60), accepted })
}

const TIME_NAMES = /\b(time|clock|elapsed|timestamp|uhrzeit|zeit|hora|tiempo|heure|temps)\b/i
const CLOCK = /(\d{1,2}):(\d{2})(?::(\d{2}(?:[.,]\d+)?))?\s*([ap])?\.?m?\.?/i

const isClock = (cells: readonly string[]) => cells.slice(0, 5).every((cell) => CLOCK.test(cell) || DATE.test(cell))
const DATE = /^\d{1,4}[-/.]\d{1,2}[-/.]\d{1,4}$/

/** Seconds of every row: from a clock, which may pass midnight; from a column of elapsed time; else by counting rows. */
function timesOf({ head, rows, numberOf }: TextTable): {
  readonly column: number
  readonly seconds: readonly number[]
} {
  const clock = head.findIndex((_, i) => rows.slice(0, 5).every((row) => CLOCK.test(row[i]!)))
  if (clock !== -1) return { column: clock, seconds: pastMidnight(rows.map((row) => secondsOfDay(row[clock]!))) }
  const elapsed = head.findIndex((name) => TIME_NAMES.test(name))
  if (elapsed === -1) return { column: -1, seconds: rows.map((_, i) => i * APART_S) }
  const unit = secondsPerUnit(head[elapsed]!)
  return { column: elapsed, seconds: rows.map((row) => numberOf(row[elapsed]!) * unit) }
}

function secondsOfDay(cell: string): number {
  const [, hours, minutes, seconds = '0', half] = CLOCK.exec(cell) ?? []
  if (hours === undefined) return Number.NaN
  const hour = half ? (Number(hours) % 12) + (half.toLowerCase() === 'p' ? 12 : 0) : Number(hours)
  return hour * 3600 + Number(minutes) * 60 + Number(seconds.replace(',', '.'))
}

function pastMidnight(seconds: readonly number[]): readonly number[] {
  let [days, before] = [0, Number.NEGATIVE_INFINITY]
  return seconds.map((each) => {
    if (each < before - DAY_S / 2) days++
    if (!Number.isNaN(each)) before = each
    return each + days * DAY_S
  })
}

function secondsPerUnit(header: string): number {
  if (/\b(min|minutes?|minuten|minutos)\b/i.test(header)) return 60
  if (/\b(h|hours?|stunden|horas)\b/i.test(header)) return 3600
  return /\b(ms|milliseconds?)\b/i.test(header) ? 1e-3 : 1
}

/** In the order of time: some loggers write the latest row first. */
const rising = (samples: Column['samples']): Column['samples'] => samples.toSorted((a, b) => a.time_s - b.time_s)
