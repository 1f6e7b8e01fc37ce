import { fail, ok, outOfRange, type Problem, type Quantity, type Result } from '@chargewright/quantity'

/** A copper tube by its diameters. */
export interface CopperTube {
  /** Outside diameter in inches as it is called: `3/8`, `1-1/8`. */
  readonly nominal: string
  readonly temper: 'annealed' | 'drawn'
  readonly outside_in: number
  readonly inside_in: number
}

type Row = readonly [nominal: string, temper: CopperTube['temper'], outside_in: number, inside_in: number]

/**
 * Tube for air conditioning and refrigeration field service. Where a size comes in two walls, the usual one is first.
 *
 * @source ASTM B280, table 1: diameters and walls
 */
const ROWS: readonly Row[] = [
  ['1/4', 'annealed', 0.25, 0.19],
  ['5/16', 'annealed', 0.312, 0.248],
  ['3/8', 'annealed', 0.375, 0.311],
  ['3/8', 'drawn', 0.375, 0.315],
  ['1/2', 'annealed', 0.5, 0.436],
  ['1/2', 'drawn', 0.5, 0.43],
  ['5/8', 'annealed', 0.625, 0.555],
  ['5/8', 'drawn', 0.625, 0.545],
  ['3/4', 'annealed', 0.75, 0.68],
  ['3/4', 'annealed', 0.75, 0.666],
  ['3/4', 'drawn', 0.75, 0.666],
  ['7/8', 'annealed', 0.875, 0.785],
  ['7/8', 'drawn', 0.875, 0.785],
  ['1-1/8', 'annealed', 1.125, 1.025],
  ['1-1/8', 'drawn', 1.125, 1.025],
  ['1-3/8', 'annealed', 1.375, 1.265],
  ['1-3/8', 'drawn', 1.375, 1.265],
  ['1-5/8', 'drawn', 1.625, 1.505],
  ['2-1/8', 'drawn', 2.125, 1.985],
]

export const COPPER_TUBES: readonly CopperTube[] = ROWS.map(([nominal, temper, outside_in, inside_in]) => ({
  nominal,
  temper,
  outside_in,
  inside_in,
}))

/**
 * A tube of the table by its size.
 *
 * @param nominal `3/8`, `1-1/8`; spaces for the hyphen and an inch sign do no harm
 */
export function copperTube(nominal: string, temper: CopperTube['temper']): Result<CopperTube, Problem> {
  const wanted = nominal.slice(0, 20).replace(/["″]/g, '').trim().replace(/\s+/g, '-')
  const tube = COPPER_TUBES.find((one) => one.nominal === wanted && one.temper === temper)
  if (tube) return ok(tube)
  const sizes = COPPER_TUBES.filter((one) => one.temper === temper).map((one) => one.nominal)
  const accepted = `${temper} tube of ${[...new Set(sizes)].join(', ')} in`
  return fail({ kind: 'unknown', field: 'tube size', value: wanted, accepted })
}

const INCH = 0.0254
const MAX_M = 1

/** A tube that is not in the table, from what a caliper says: outside diameter and wall, both m. */
export function measuredTube(outside: Quantity<'length'>, wall: Quantity<'length'>): Result<CopperTube, Problem> {
  const problem =
    outOfRange('outside diameter', outside.si, Number.MIN_VALUE, MAX_M, 'm') ??
    outOfRange('wall', wall.si, 0, outside.si / 2, 'm')
  if (problem) return fail(problem)
  const outside_in = outside.si / INCH
  const inside_in = (outside.si - 2 * wall.si) / INCH
  return ok({ nominal: String(Number(outside_in.toPrecision(4))), temper: 'annealed', outside_in, inside_in })
}

/** Inside volume per length, m³/m. */
export function boreArea_m2({ inside_in }: CopperTube): number {
  return (Math.PI / 4) * (inside_in * INCH) ** 2
}
