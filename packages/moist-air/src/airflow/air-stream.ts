import { kelvin, ok, type Problem, pascal, type Quantity, type Result } from '@chargewright/quantity'
import { type Humidity, type MoistAir, moistAir } from '../moist-air.ts'

/** Air whose flow is to be found, and how well its density is known. */
export interface AirStream {
  readonly air: MoistAir
  /** Relative standard uncertainty of the density. */
  readonly uDensity: number
}

/**
 * The air at the place of measurement, at the site's pressure (from its elevation: `atmosphericPressure`).
 *
 * @param temperature −40 °C to 75 °C
 * @param pressure absolute, 50 kPa to 120 kPa
 * @param humidity where it was not measured the air is taken as half saturated, and all humidities go into the
 *   uncertainty; at 25 °C that is 0.3 %
 * @returns the air; else the input that is out of range
 */
export function airStream(
  temperature: Quantity<'temperature'>,
  pressure: Quantity<'absolute pressure'>,
  humidity?: Humidity,
): Result<AirStream, Problem> {
  const at = (one: Humidity) => moistAir(kelvin(temperature.si), one, pascal(pressure.si))
  const air = at(humidity ?? { relativeHumidity: 0.5 })
  if (!air.ok) return air
  const byReadings = Math.hypot((temperature.u ?? 0) / temperature.si, (pressure.u ?? 0) / pressure.si)
  if (humidity) return ok({ air: air.value, uDensity: byReadings })
  const [dry, wet] = [at({ relativeHumidity: 0 }), at({ relativeHumidity: 1 })]
  if (!dry.ok) return dry
  if (!wet.ok) return wet
  const half = (dry.value.density_kg_m3 - wet.value.density_kg_m3) / 2 / air.value.density_kg_m3
  return ok({ air: air.value, uDensity: Math.hypot(byReadings, half / Math.sqrt(3)) })
}
