import { fail, ok, type Problem, type Quantity, type Result } from '@chargewright/quantity'
import { atmosphereAt, typedPressure, typedQuality, typedTemperature } from '../typed-flag.ts'

/** The flags of `saturation` and `state`, as typed. */
export interface PointFlags {
  readonly pressure?: string
  readonly temperature?: string
  readonly quality?: string
  readonly altitude?: string
}

/** What the flags say, in SI, and the site's atmosphere from which gauge pressures count. */
export interface Point {
  readonly pressure_Pa?: number
  readonly temperature_K?: number
  readonly quality?: number
  readonly atmosphere: Quantity<'absolute pressure'>
}

export function readPoint(flags: PointFlags): Result<Point, readonly Problem[]> {
  const atmosphere = atmosphereAt(flags.altitude)
  if (!atmosphere.ok) return fail([atmosphere.error])
  const read = {
    pressure_Pa: typed(flags.pressure, (text) => typedPressure(text, atmosphere.value)),
    temperature_K: typed(flags.temperature, typedTemperature),
    quality: typed(flags.quality, typedQuality),
  }
  const problems = Object.values(read).flatMap((result) => (result && !result.ok ? [result.error] : []))
  if (problems.length > 0) return fail(problems)
  const values = Object.entries(read).flatMap(([key, result]) => (result?.ok ? [[key, result.value]] : []))
  return ok({ ...Object.fromEntries(values), atmosphere: atmosphere.value })
}

const typed = (text: string | undefined, read: (text: string) => Result<number, Problem>) =>
  text === undefined ? undefined : read(text)
