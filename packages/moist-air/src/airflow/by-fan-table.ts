import { evidence, fail, outOfRange, type Problem, type Quantity, type Result, say } from '@chargewright/quantity'
import type { AirStream } from './air-stream.ts'
import { type Airflow, airflowFound, STANDARD_DENSITY } from './airflow.ts'
import { MAKERS_TABLE, placeIn } from './makers-table.ts'

/** One line of a maker's fan table, at the speed tap as set. */
export interface FanEntry {
  readonly externalStatic: Quantity<'pressure difference'>
  readonly airflow: Quantity<'airflow'>
}

/**
 * Airflow from the external static pressure, supply less return, against the maker's fan table, between its entries
 * only, on straight lines.
 *
 * The table is for standard air. At one speed a fan moves the same volume of any air, and its pressures go with the
 * density.
 *
 * @param table two lines or more, static pressure rising, airflow above 0; for the blower's speed and the coil and
 *   filter as fitted
 * @param externalStatic within the table once brought to standard density
 * @param stream the air through the fan
 * @returns the airflow as it is; else the pressure that is outside, or `unreadable` for a table that is none
 * @source fan laws, density: any handbook of fans
 */
export function airflowByFanTable(
  table: readonly FanEntry[],
  externalStatic: Quantity<'pressure difference'>,
  stream: AirStream,
): Result<Airflow, Problem> {
  const statics = table.map((entry) => entry.externalStatic.si)
  const flows = table.map((entry) => entry.airflow.si)
  if (!isFanTable(statics, flows)) return fail(notOne(table.length))
  const lighter = stream.air.density_kg_m3 / STANDARD_DENSITY
  const standardStatic = externalStatic.si / lighter
  const field = 'external static pressure at standard density'
  const outside = outOfRange(field, standardStatic, statics[0]!, statics.at(-1)!, 'Pa')
  if (outside) return fail(outside)

  const i = placeIn(statics, standardStatic)
  const slope = (flows[i + 1]! - flows[i]!) / (statics[i + 1]! - statics[i]!)
  const actual_m3_s = flows[i]! + slope * (standardStatic - statics[i]!)
  const byPressure = (slope * (externalStatic.u ?? 0)) / lighter / actual_m3_s
  const byDensity = (slope * standardStatic) / actual_m3_s
  return airflowFound(
    'by fan table',
    stream,
    {
      actual_m3_s,
      uActual: Math.hypot(byPressure, MAKERS_TABLE, byDensity * stream.uDensity),
      uMass: Math.hypot(byPressure, MAKERS_TABLE, (1 - byDensity) * stream.uDensity),
    },
    "maker's fan table, between its entries",
    [
      evidence(say`external static pressure ${externalStatic}, air density ${Number(lighter.toFixed(3))} of standard`),
      evidence(
        say`the blower runs at the speed of the table, with coil and filter as the table has them`,
        'assumption',
      ),
    ],
  )
}

function isFanTable(statics: readonly number[], flows: readonly number[]): boolean {
  const rising = statics.every((p, i) => Math.abs(p) < 1e5 && (i === 0 || p > statics[i - 1]!))
  return statics.length >= 2 && rising && flows.every((flow) => flow > 0 && flow < 1e6)
}

function notOne(lines: number): Problem {
  const accepted = 'two lines or more, static pressure rising, an airflow on each'
  return { kind: 'unreadable', field: 'fan table', value: `${lines} lines`, accepted }
}
