import { evidence, fail, outOfRange, type Problem, type Quantity, type Result, say } from '@chargewright/quantity'
import type { AirStream } from './air-stream.ts'
import { type Airflow, airflowFound, STANDARD_DENSITY } from './airflow.ts'
import { MAKERS_TABLE, placeIn } from './makers-table.ts'

/** One line of a maker's table of a coil or a filter. */
export interface DropEntry {
  readonly airflow: Quantity<'airflow'>
  readonly drop: Quantity<'pressure difference'>
}

/**
 * Airflow from the pressure drop across a coil or a filter, against its maker's table, between its entries only, on
 * straight lines in the logarithms.
 *
 * The table is for standard air. For a passage that does not change its shape, similarity makes Δp ∝ ρ^(n−1) V^n with
 * the exponent n of the table itself: a coil (n near 2) feels the density, a deep filter (n near 1) hardly. The change of
 * viscosity with temperature is left out.
 *
 * @param table two lines or more, airflow and drop both rising, exponent 0.9 to 2.2; for the same state, wet coil or dry
 * @param drop within the table once brought to standard density
 * @param stream the air through the passage
 * @returns the airflow as it is; else the drop that is outside, or `unreadable` for a table that is none
 * @source dimensional analysis of a resistance in turbulent to laminar flow
 */
export function airflowByPressureDrop(
  table: readonly DropEntry[],
  drop: Quantity<'pressure difference'>,
  stream: AirStream,
): Result<Airflow, Problem> {
  const flows = table.map((entry) => entry.airflow.si)
  const drops = table.map((entry) => entry.drop.si)
  const exponent = Math.log(drops.at(-1)! / drops[0]!) / Math.log(flows.at(-1)! / flows[0]!)
  if (!isResistance(flows, drops, exponent)) return fail(notOne(table.length))
  const lighter = stream.air.density_kg_m3 / STANDARD_DENSITY
  const standardDrop = drop.si / lighter ** (exponent - 1)
  const outside = outOfRange('pressure drop at standard density', standardDrop, drops[0]!, drops.at(-1)!, 'Pa')
  if (outside) return fail(outside)

  const i = placeIn(drops, standardDrop)
  const local = Math.log(drops[i + 1]! / drops[i]!) / Math.log(flows[i + 1]! / flows[i]!)
  const actual_m3_s = flows[i]! * (standardDrop / drops[i]!) ** (1 / local)
  const shared = Math.hypot((drop.u ?? 0) / drop.si / local, MAKERS_TABLE)
  return airflowFound(
    'by pressure drop',
    stream,
    {
      actual_m3_s,
      uActual: Math.hypot(shared, ((exponent - 1) / local) * stream.uDensity),
      uMass: Math.hypot(shared, (1 - (exponent - 1) / local) * stream.uDensity),
    },
    "maker's table, between its entries",
    [
      evidence(say`pressure drop ${drop}, air density ${Number(lighter.toFixed(3))} of standard`),
      evidence(say`the table is for a coil as wet, or a filter as clean, as this one`, 'assumption'),
    ],
  )
}

function isResistance(flows: readonly number[], drops: readonly number[], exponent: number): boolean {
  const rising = (values: readonly number[]) => values.every((v, i) => v > (i === 0 ? 0 : values[i - 1]!) && v < 1e6)
  return flows.length >= 2 && rising(flows) && rising(drops) && exponent >= 0.9 && exponent <= 2.2
}

function notOne(lines: number): Problem {
  const accepted = 'two lines or more, airflow and pressure drop rising together, the drop with its power 0.9 to 2.2'
  return { kind: 'unreadable', field: 'table of pressure drops', value: `${lines} lines`, accepted }
}
