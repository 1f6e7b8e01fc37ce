import { fail, ok, type Problem, type Quantity, type Result } from '@chargewright/quantity'
import { ifGiven, readFlags } from '../read-flags.ts'
import { atmosphereAt, typedPressure, typedShare, typedTemperature } from '../typed-flag.ts'

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
  const values = readFlags({
    pressure_Pa: ifGiven(flags.pressure, (text) => typedPressure(text, atmosphere.value)),
    temperature_K: ifGiven(flags.temperature, (text) => typedTemperature(text, 'temperature')),
    quality: ifGiven(flags.quality, (text) => typedShare(text, 'quality')),
  })
  return values.ok ? ok({ ...values.value, atmosphere: atmosphere.value }) : values
}
