import type { Condition } from '@chargewright/charging'
import type { TraversePoints } from '@chargewright/moist-air'
import { COVERAGE, format, quantity, render, type UnitPreference } from '@chargewright/quantity'
import { evidenceJson } from '../evidence-json.ts'
import { inSi, optional } from '../quantity-json.ts'
import type { AirflowAnswer } from './airflow.ts'
import { ductUnits } from './airflow-text.ts'

/** An airflow as JSON, with the reading that a visit file would hold of it. */
export function airflowJson({ airflow: found, perCapacity }: AirflowAnswer, units: UnitPreference): object {
  const inDucts = ductUnits(units)
  const { airflow, standardAirflow, evidence } = found
  return {
    ...inSi('airflow', airflow),
    ...inSi('standard_airflow', standardAirflow),
    ...(perCapacity ? inSi('airflow_per_capacity', perCapacity.quantity) : {}),
    evidence: evidenceJson(evidence, inDucts),
    ...optional('per_capacity', perCapacity && judged(perCapacity.condition, inDucts)),
    reading: {
      kind: 'reading',
      what: 'airflow',
      value: format(quantity('airflow', airflow.si), units),
      instrument: { accuracy: format(quantity('airflow', COVERAGE * (airflow.u ?? 0)), units) },
    },
  }
}

/** Whether it is in the usual band, in the words in which a charge is judged by it. */
function judged({ state, evidence, remedy }: Condition, units: UnitPreference): object {
  return {
    state,
    ...optional('remedy', remedy && render(remedy, units)),
    evidence: evidenceJson(evidence, units),
  }
}

/** Where to hold the probe, from one wall. */
export function traversePointsJson(points: TraversePoints): object {
  return points.kind === 'round'
    ? { kind: points.kind, across_diameter_m: points.acrossDiameter_m, diameters: points.diameters }
    : { kind: points.kind, across_width_m: points.acrossWidth_m, across_height_m: points.acrossHeight_m }
}
