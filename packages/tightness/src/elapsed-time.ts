import { fail, ok, type Problem, parse, type Result } from '@chargewright/quantity'

/**
 * A time in a log, as seconds from some zero that all times of the log share: a number of seconds, a duration
 * (`5 min`, `1 h 20 min`), a clock with seconds (`0:05:00`, `14:05:30`), or a date and time (ISO 8601,
 * `2026-05-04T14:05:30Z`). `14:05` can be hours and minutes or minutes and seconds and is asked about.
 *
 * @returns seconds, and on which clock they count, so that kinds are not mixed within one log
 */
export function elapsedTime(text: string, field: string): Result<ElapsedTime, Problem> {
  const typed = text.trim()
  if (/^\d{1,9}(\.\d{1,9})?$/.test(typed)) return ok({ clock: 'elapsed', seconds: Number(typed) })
  if (/^\d{1,3}:\d{2}$/.test(typed)) return ambiguous(typed, field)
  const clock = /^(\d{1,3}):([0-5]\d):([0-5]\d(?:\.\d{1,9})?)$/.exec(typed)
  if (clock) return ok({ clock: 'time of day', seconds: inSeconds(clock[1]!, clock[2]!, clock[3]!) })
  if (/^\d{4}-/.test(typed)) return dateTime(typed, field)
  const duration = parse(typed, 'duration', { field })
  return duration.ok ? ok({ clock: 'elapsed', seconds: duration.value.si }) : unreadable(typed, field)
}

export interface ElapsedTime {
  readonly clock: 'elapsed' | 'time of day' | 'local date' | 'date with zone'
  readonly seconds: number
}

const DATE_TIME = /^(\d{4})-(\d{2})-(\d{2})[T ](\d{2}):(\d{2})(?::(\d{2}(?:[.,]\d{1,9})?))?(Z|[+-]\d{2}:?\d{2})?$/i

function dateTime(typed: string, field: string): Result<ElapsedTime, Problem> {
  const [, year, month, day, hour, minute, second = '0', zone] = DATE_TIME.exec(typed) ?? []
  if (year === undefined) return unreadable(typed, field)
  const date = [Number(year), Number(month), Number(day)] as const
  if (!exists(...date) || Number(hour) > 23 || Number(minute) > 59) return unreadable(typed, field)
  const seconds = Number(second.replace(',', '.'))
  if (seconds >= 61) return unreadable(typed, field)
  const local = dayNumber(...date) * 86_400 + inSeconds(hour!, minute!, String(seconds))
  if (zone === undefined) return ok({ clock: 'local date', seconds: local })
  return ok({ clock: 'date with zone', seconds: local - offset(zone) })
}

function inSeconds(hours: string, minutes: string, seconds: string): number {
  return Number(hours) * 3600 + Number(minutes) * 60 + Number(seconds)
}

function offset(zone: string): number {
  const [, sign, hours, minutes] = /^([+-])(\d{2}):?(\d{2})$/.exec(zone) ?? []
  if (sign === undefined) return 0
  return (sign === '-' ? -1 : 1) * inSeconds(hours!, minutes!, '0')
}

function exists(year: number, month: number, day: number): boolean {
  if (!(month >= 1 && month <= 12 && day >= 1)) return false
  const next = month === 12 ? dayNumber(year + 1, 1, 1) : dayNumber(year, month + 1, 1)
  return day <= next - dayNumber(year, month, 1)
}

/** Days since 1 March of the year 0 in the Gregorian calendar: with the year begun in March, the leap day comes last. */
function dayNumber(year: number, month: number, day: number): number {
  const y = month > 2 ? year : year - 1
  const m = (month + 9) % 12
  return (
    365 * y + Math.floor(y / 4) - Math.floor(y / 100) + Math.floor(y / 400) + Math.floor((153 * m + 2) / 5) + day - 1
  )
}

const shorten = (text: string) => (text.length > 60 ? `${text.slice(0, 60)}…` : text)

function ambiguous(typed: string, field: string): Result<ElapsedTime, Problem> {
  return fail({ kind: 'ambiguous', field, value: typed, accepted: `${typed}:00 or 0:${typed}` })
}

function unreadable(typed: string, field: string): Result<ElapsedTime, Problem> {
  const accepted =
    'seconds, a duration (5 min), a clock with seconds (0:05:00) or a date and time (2026-05-04T14:05:30Z)'
  return fail({ kind: 'unreadable', field, value: shorten(typed), accepted })
}
