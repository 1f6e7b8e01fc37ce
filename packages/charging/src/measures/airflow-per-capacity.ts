import { evidence, type Measure, type Quantity, quantity, say } from '@chargewright/quantity'
import type { Visit } from '@chargewright/visit'
import { typedIn } from './typed-in.ts'

/** Measured airflow over the nominal capacity. */
export function airflowPerCapacity(visit: Visit): Measure<Quantity<'specific airflow'>> | undefined {
  const airflow = visit.readings.airflow
  const capacity = visit.system.figures.nominalCapacity
  if (!airflow || !capacity || !(capacity.quantity.si > 0)) return undefined
  const { si: flow, u = 0 } = airflow.quantity
  const value = quantity('specific airflow', flow / capacity.quantity.si, u / capacity.quantity.si)
  const nominal = {
    ...evidence(say`nominal capacity ${capacity.quantity}, typed “${capacity.typed}”`),
    eventId: capacity.eventId,
  }
  return { quantity: value, evidence: evidence(say`Airflow ${value}`, undefined, [typedIn(airflow), nominal]) }
}
