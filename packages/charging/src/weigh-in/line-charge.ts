import {
  evidence,
  fail,
  type Measure,
  ok,
  outOfRange,
  type Problem,
  type Quantity,
  quantity,
  type Result,
  say,
} from '@chargewright/quantity'
import type { Contents } from './contents.ts'
import { boreArea_m2, type CopperTube } from './copper-tube.ts'

/** One line between the units. */
export interface Line {
  readonly name: 'liquid line' | 'suction line'
  readonly tube: CopperTube
  readonly length: Quantity<'length'>
  /** Length for which the nameplate charge already allows. */
  readonly included: Quantity<'length'>
}

/** Line sets on the market often have thinner walls than the standard: up to 7 % more inside volume. */
const THIN_WALL_SHARE = 0.07
const MAX_LENGTH_M = 1e4

/**
 * What a line holds beyond (or, negative, short of) the length that the nameplate includes: length · bore · density.
 *
 * @returns mass in kg with its uncertainty: limits of ±7 % for the wall (JCGM 100:2008, 4.3.7), density, lengths
 * @source ASTM B280, table 1 for the bore; the wall share by walls that line-set makers state
 */
export function lineCharge(line: Line, contents: Contents): Result<Measure<Quantity<'mass'>>, Problem> {
  const { name, tube, length, included } = line
  const problem =
    outOfRange(`${name}, length`, length.si, 0, MAX_LENGTH_M, 'm') ??
    outOfRange(`${name}, included length`, included.si, 0, MAX_LENGTH_M, 'm')
  if (problem) return fail(problem)
  const area = boreArea_m2(tube)
  const beyond = length.si - included.si
  const si = area * beyond * contents.density_kg_m3
  const u = Math.hypot(
    (si * THIN_WALL_SHARE) / Math.sqrt(3),
    area * beyond * contents.u_kg_m3,
    area * contents.density_kg_m3 * Math.hypot(length.u ?? 0, included.u ?? 0),
  )
  const mass = quantity('mass', si, u)
  const perLength = quantity('mass per length', area * contents.density_kg_m3)
  const statement = say`${tube.nominal} in ${name} ${mass}: ${length} less ${included} included, at ${perLength} of ${contents.words}`
  return ok({ quantity: mass, evidence: evidence(statement, `ASTM B280, table 1; ${contents.source}`) })
}
