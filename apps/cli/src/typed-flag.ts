import {
  atmosphericPressure,
  fail,
  ok,
  type Problem,
  parse,
  type Quantity,
  type Result,
  STANDARD_ATMOSPHERE,
  toAbsolute,
} from '@chargewright/quantity'
import { unreadable } from './failure.ts'

/** The site's atmosphere at `--altitude`, or at sea level. */
export function atmosphereAt(altitude: string | undefined): Result<Quantity<'absolute pressure'>, Problem> {
  if (altitude === undefined) return ok(STANDARD_ATMOSPHERE)
  const elevation = parse(altitude, 'elevation', { field: 'altitude' })
  return elevation.ok ? atmosphericPressure(elevation.value) : elevation
}

/** `--pressure` as typed, Pa absolute: a gauge pressure counts from the site's atmosphere. */
export function typedPressure(text: string, atmosphere: Quantity<'absolute pressure'>): Result<number, Problem> {
  const reading = parse(text, ['gauge pressure', 'absolute pressure'], { field: 'pressure' })
  if (!reading.ok) return reading
  const absolute = toAbsolute(reading.value, atmosphere, 'pressure')
  return absolute.ok ? ok(absolute.value.si) : absolute
}

/** A temperature as typed, K. */
export function typedTemperature(text: string, field: string): Result<number, Problem> {
  const temperature = parse(text, 'temperature', { field })
  return temperature.ok ? ok(temperature.value.si) : temperature
}

/** A share as typed: `0.2` or `20 %`. Its range is the business of whoever asks for it. */
export function typedShare(text: string, field: string): Result<number, Problem> {
  const [, digits = '', percent = ''] = /^\s*([-+]?[\d.]+)\s*(%?)\s*$/.exec(text) ?? []
  const share = digits === '' ? Number.NaN : Number(digits)
  if (!Number.isFinite(share)) return fail(unreadable(field, text, 'a share such as 0.2 or 20 %'))
  return ok(percent === '' ? share : share / 100)
}
