import { fail, ok, outOfRange, type Problem, type Result } from '@chargewright/quantity'

/** Where a compressor runs: dew temperatures at its suction and at its discharge pressure. */
export interface DewPair {
  readonly suctionDew_K: number
  readonly dischargeDew_K: number
}

/** Where figures may be used: a convex region, its corners in anticlockwise order, at least three. */
export type Region = readonly DewPair[]

/**
 * The smallest convex region about points.
 *
 * @returns the region; else `missing` when the points lie on one line
 * @source monotone chain: Andrew 1979, Inf. Process. Lett. 9(5), 216–219
 */
export function convexRegion(points: readonly DewPair[]): Result<Region, Problem> {
  const sorted = points.toSorted((a, b) => a.suctionDew_K - b.suctionDew_K || a.dischargeDew_K - b.dischargeDew_K)
  const region = [...chain(sorted), ...chain(sorted.toReversed())]
  if (region.length >= 3) return ok(region)
  const accepted = 'points that span a region of suction and discharge temperatures'
  return fail({ kind: 'missing', field: 'range of use', value: `${points.length} points on one line`, accepted })
}

/** The four corners of a range of suction and a range of discharge dew temperatures. */
export function boxRegion(suction_K: readonly [number, number], discharge_K: readonly [number, number]): Region {
  const corner = (suctionDew_K: number, dischargeDew_K: number) => ({ suctionDew_K, dischargeDew_K })
  const [[s0, s1], [d0, d1]] = [suction_K, discharge_K]
  return [corner(s0, d0), corner(s1, d0), corner(s1, d1), corner(s0, d1)]
}

/** The problem with a point outside the region: which temperature, and what it may be. */
export function outsideRegion(region: Region, { suctionDew_K, dischargeDew_K }: DewPair): Problem | undefined {
  const suctions = region.map((corner) => corner.suctionDew_K)
  const beyond = outOfRange('suction dew temperature', suctionDew_K, Math.min(...suctions), Math.max(...suctions), 'K')
  if (beyond) return beyond
  const crossings = region.flatMap((a, i) => crossing(a, region[(i + 1) % region.length]!, suctionDew_K))
  const [min, max] = [Math.min(...crossings), Math.max(...crossings)]
  const field = `discharge dew temperature at a suction dew temperature of ${suctionDew_K.toFixed(2)} K`
  // A point that made the region must lie in it, rounding or not.
  return outOfRange(field, dischargeDew_K, min - ROUNDING_K, max + ROUNDING_K, 'K')
}

const ROUNDING_K = 1e-9

/** Discharge temperatures at which the edge from `a` to `b` meets a suction temperature. */
function crossing(a: DewPair, b: DewPair, suction_K: number): readonly number[] {
  const run = b.suctionDew_K - a.suctionDew_K
  const share = (suction_K - a.suctionDew_K) / run
  if (run === 0) return suction_K === a.suctionDew_K ? [a.dischargeDew_K, b.dischargeDew_K] : []
  return share >= 0 && share <= 1 ? [a.dischargeDew_K + share * (b.dischargeDew_K - a.dischargeDew_K)] : []
}

/** One side of the hull without its last point, which begins the other side. */
function chain(sorted: readonly DewPair[]): readonly DewPair[] {
  const side: DewPair[] = []
  for (const point of sorted) {
    while (side.length >= 2 && turn(side.at(-2)!, side.at(-1)!, point) <= 0) side.pop()
    side.push(point)
  }
  return side.slice(0, -1)
}

/** Positive for a turn to the left. */
function turn(a: DewPair, b: DewPair, c: DewPair): number {
  return (
    (b.suctionDew_K - a.suctionDew_K) * (c.dischargeDew_K - a.dischargeDew_K) -
    (b.dischargeDew_K - a.dischargeDew_K) * (c.suctionDew_K - a.suctionDew_K)
  )
}
