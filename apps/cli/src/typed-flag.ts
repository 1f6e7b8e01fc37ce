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

/** `--temperature` as typed, K. */
export function typedTemperature(text: string): Result<number, Problem> {
  const temperature = parse(text, 'temperature', { field: 'temperature' })
  return temperature.ok ? ok(temperature.value.si) : temperature
}

/** `--quality` as typed: a plain number from 0 to 1. */
export function typedQuality(text: string): Result<number, Problem> {
  const quality = Number(text)
  const accepted = 'a number from 0 (all liquid) to 1 (all vapour)'
  return text.trim() !== '' && Number.isFinite(quality) ? ok(quality) : fail(unreadable('quality', text, accepted))
}
