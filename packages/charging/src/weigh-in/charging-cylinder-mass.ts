import {
  evidence,
  fail,
  kelvin,
  type Measure,
  ok,
  outOfRange,
  type Problem,
  type Quantity,
  quantity,
  type Result,
  say,
} from '@chargewright/quantity'
import type { Refrigerant } from '@chargewright/refrigerant'
import { saturationAtTemperature } from '@chargewright/refrigerant'

/**
 * Mass that left a graduated charging cylinder as its liquid level fell: volume · (liquid − vapour), for vapour of the
 * same temperature takes the place of the liquid.
 *
 * @param drop volume between the two levels, m³
 * @param temperature of the liquid in the cylinder, by its pressure or a probe; the same at both levels
 * @source balance of mass at constant volume; equation of state
 */
export function chargingCylinderMass(
  refrigerant: Refrigerant,
  drop: Quantity<'volume'>,
  temperature: Quantity<'temperature'>,
): Result<Measure<Quantity<'mass'>>, Problem> {
  const problem = outOfRange('fall of the level', drop.si, 0, 1, 'm³')
  if (problem) return fail(problem)
  const net = (T: number) => {
    const at = saturationAtTemperature(refrigerant, kelvin(T))
    return at.ok ? ok(at.value.bubble.density_kg_m3 - at.value.dew.density_kg_m3) : at
  }
  const density = net(temperature.si)
  if (!density.ok) return density
  const colder = temperature.u ? net(temperature.si - temperature.u) : density
  if (!colder.ok) return colder
  const u = Math.hypot((drop.u ?? 0) * density.value, drop.si * (colder.value - density.value))
  const mass = quantity('mass', drop.si * density.value, u)
  const statement = say`${mass} left the charging cylinder: ${drop} of liquid at ${temperature}`
  return ok({ quantity: mass, evidence: evidence(statement, `equation of state of ${refrigerant.name}`) })
}
