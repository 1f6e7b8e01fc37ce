import {
  fail,
  kelvin,
  ok,
  outOfRange,
  type Problem,
  type Quantity,
  quantity,
  type Result,
} from '@chargewright/quantity'
import { type Refrigerant, saturationAtTemperature } from '@chargewright/refrigerant'

/**
 * What a scale that is graduated in mass for one temperature means at another: reading · liquid density as it is /
 * liquid density of the scale.
 *
 * @param reading mass shown, kg
 */
export function correctedReading(
  refrigerant: Refrigerant,
  reading: Quantity<'mass'>,
  scaleTemperature: Quantity<'temperature'>,
  temperature: Quantity<'temperature'>,
): Result<Quantity<'mass'>, Problem> {
  const problem = outOfRange('reading', reading.si, 0, 1e4, 'kg')
  if (problem) return fail(problem)
  const scale = saturationAtTemperature(refrigerant, kelvin(scaleTemperature.si))
  if (!scale.ok) return scale
  const now = saturationAtTemperature(refrigerant, kelvin(temperature.si))
  if (!now.ok) return now
  const factor = now.value.bubble.density_kg_m3 / scale.value.bubble.density_kg_m3
  return ok(quantity('mass', reading.si * factor, reading.u === undefined ? undefined : reading.u * factor))
}
