import { fail, ok, outOfRange, type Problem, type Result } from '@chargewright/quantity'

/** A calendar day counted from 1970-01-01. Laws count days where the system stands; the hour of an entry is left out. */
export type Day = number

const MIN_YEAR = 1900
const MAX_YEAR = 2199

/**
 * Reads the day of an ISO date or timestamp, `2026-02-03` or `2026-02-03T10:00:00Z`, as written: no zone is applied.
 *
 * @returns years 1900 to 2199; else a problem of `field`
 */
export function readDay(text: string, field: string): Result<Day, Problem> {
  const [, year, month, day] = /^(\d{4})-(\d{2})-(\d{2})(?=$|T)/.exec(text)?.map(Number) ?? []
  const unreadable = {
    kind: 'unreadable',
    field,
    value: text.slice(0, 60),
    accepted: 'a date like 2026-02-03',
  } as const
  if (year === undefined || month === undefined || day === undefined) return fail(unreadable)
  const problem = outOfRange(field, year, MIN_YEAR, MAX_YEAR, 'years')
  if (problem) return fail(problem)
  const count = dayOf(year, month, day)
  return dayText(count) === text.slice(0, 10) ? ok(count) : fail(unreadable)
}

/** The day as ISO text. */
export function dayText(day: Day): string {
  const { year, month, date } = dateOf(day)
  return `${year}-${String(month).padStart(2, '0')}-${String(date).padStart(2, '0')}`
}

export const yearOf = (day: Day): number => dateOf(day).year

/** The last day of a year. */
export const yearEnd = (year: number): Day => dayOf(year, 12, 31)

/** The same date some months later; the last of that month where it is shorter. */
export function monthsLater(day: Day, months: number): Day {
  const { year, month, date } = dateOf(day)
  const first = year * 12 + (month - 1) + months
  const next = dayOf(Math.floor((first + 1) / 12), ((first + 1) % 12) + 1, 1)
  return Math.min(dayOf(Math.floor(first / 12), (first % 12) + 1, 1) + date - 1, next - 1)
}

// Gregorian years counted from 1 March: the leap day is then the last day of its year, and the months before it follow
// one straight line, of which (153·m + 2)/5 is the whole-number form. 719 468 days lead from 0000-03-01 to 1970-01-01.
const EPOCH = 719_468
const DAYS_IN_400_YEARS = 146_097

function dayOf(year: number, month: number, date: number): Day {
  const y = month <= 2 ? year - 1 : year
  const m = (month + 9) % 12
  const leapDays = Math.floor(y / 4) - Math.floor(y / 100) + Math.floor(y / 400)
  return 365 * y + leapDays + Math.floor((153 * m + 2) / 5) + date - 1 - EPOCH
}

function dateOf(day: Day): { readonly year: number; readonly month: number; readonly date: number } {
  const n = day + EPOCH
  let y = Math.floor((400 * n + 799) / DAYS_IN_400_YEARS)
  if (marchFirst(y) > n) y -= 1
  const inYear = n - marchFirst(y)
  const m = Math.floor((5 * inYear + 2) / 153)
  const month = ((m + 2) % 12) + 1
  return { year: month <= 2 ? y + 1 : y, month, date: inYear - Math.floor((153 * m + 2) / 5) + 1 }
}

const marchFirst = (y: number) => 365 * y + Math.floor(y / 4) - Math.floor(y / 100) + Math.floor(y / 400)
