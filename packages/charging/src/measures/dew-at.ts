import { ok, type Problem, pascal, type Quantity, quantity, type Result, toAbsolute } from '@chargewright/quantity'
import { type Refrigerant, saturationAtPressure } from '@chargewright/refrigerant'

/**
 * Dew temperature at a pressure, with the uncertainty of its gauge carried along the saturation line.
 *
 * @param atmosphere of the place, from which a gauge pressure counts
 * @param field what the pressure is called where it cannot be used
 */
export function dewAt(
  pressure: Quantity<'gauge pressure' | 'absolute pressure'>,
  atmosphere: Quantity<'absolute pressure'>,
  refrigerant: Refrigerant,
  field: string,
): Result<Quantity<'temperature'>, Problem> {
  const absolute = toAbsolute(pressure, atmosphere, field)
  if (!absolute.ok) return absolute
  const { si, u = 0 } = absolute.value
  const here = saturationAtPressure(refrigerant, pascal(si))
  if (!here.ok) return here
  const beside = saturationAtPressure(refrigerant, pascal(si - u))
  if (!beside.ok) return beside
  const T = here.value.dew.temperature_K
  return ok(quantity('temperature', T, T - beside.value.dew.temperature_K))
}
