import {
  type Evidence,
  evidence,
  fail,
  ok,
  outOfRange,
  type Problem,
  type Quantity,
  quantity,
  type Result,
  say,
} from '@chargewright/quantity'
import type { AirStream } from './air-stream.ts'

/** An airflow that was measured. */
export interface Airflow {
  /** Volume of the air as it is at the place of measurement. */
  readonly airflow: Quantity<'airflow'>
  /** The same mass of air at standard density, as makers' tables and the factor 1.08 have it. */
  readonly standardAirflow: Quantity<'airflow'>
  readonly evidence: Evidence
}

/** Density of standard air, 0.075 lb/ft³. */
export const STANDARD_DENSITY = (0.075 * 0.45359237) / 0.3048 ** 3

/** Beyond these a result is a slip somewhere, not a system: 2 CFM to 200 000 CFM. */
const MIN_M3_S = 0.001
const MAX_M3_S = 100

/**
 * An airflow with its statement, at the density of its stream.
 *
 * @param method what it was found by, in words
 * @param actual_m3_s volume of the air as it is
 * @param uActual relative standard uncertainty of it
 * @param uMass the same of the mass flow; the two differ where a density comes into one of them only
 */
export function airflowFound(
  method: string,
  { air }: AirStream,
  { actual_m3_s, uActual, uMass }: { readonly actual_m3_s: number; readonly uActual: number; readonly uMass: number },
  source: string,
  from: readonly Evidence[],
): Result<Airflow, Problem> {
  const problem =
    outOfRange(`airflow ${method}`, actual_m3_s, MIN_M3_S, MAX_M3_S, 'm³/s') ??
    outOfRange(`uncertainty of the airflow ${method}`, Math.max(uActual, uMass), 0, 1, 'of its value')
  if (problem) return fail(problem)
  const standard = (actual_m3_s * air.density_kg_m3) / STANDARD_DENSITY
  const airflow = quantity('airflow', actual_m3_s, actual_m3_s * uActual)
  const standardAirflow = quantity('airflow', standard, standard * uMass)
  const statement = say`Airflow ${airflow} ${method}, ${standardAirflow} of standard air`
  return ok({ airflow, standardAirflow, evidence: evidence(statement, source, from) })
}
