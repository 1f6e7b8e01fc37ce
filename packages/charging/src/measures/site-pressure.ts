import {
  atmosphericPressure,
  evidence,
  type Measure,
  type Problem,
  type Quantity,
  STANDARD_ATMOSPHERE,
  say,
} from '@chargewright/quantity'
import type { Visit } from '@chargewright/visit'

/** Atmospheric pressure of the site: as typed, else from its elevation, else that of sea level as a stated assumption. */
export function sitePressure(visit: Visit, problems: Problem[]): Measure<Quantity<'absolute pressure'>> {
  const { atmosphericPressure: typed, elevation } = visit.system.figures
  if (typed) {
    const value = typed.quantity as Quantity<'absolute pressure'>
    return { quantity: value, evidence: { ...evidence(say`atmospheric pressure ${value}`), eventId: typed.eventId } }
  }
  if (elevation) {
    const value = atmosphericPressure(elevation.quantity as Quantity<'elevation'>)
    if (value.ok) {
      const statement = say`atmospheric pressure ${value.value} at ${elevation.quantity}`
      return {
        quantity: value.value,
        evidence: { ...evidence(statement, 'ASHRAE Fundamentals 2017, ch. 1, eq. 3'), eventId: elevation.eventId },
      }
    }
    problems.push(value.error)
  }
  return {
    quantity: STANDARD_ATMOSPHERE,
    evidence: evidence(say`atmospheric pressure ${STANDARD_ATMOSPHERE}, sea level`, 'assumption: no elevation given'),
  }
}
