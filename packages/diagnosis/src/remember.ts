import type { Belief } from './belief.ts'
import { dot, solved } from './gaussian.ts'
import type { Memory } from './memory.ts'
import type { Point } from './point.ts'
import type { WeighedPoint } from './weigh.ts'

/**
 * What this visit taught about the system itself, over all single causes: mean and covariance of the mixture, of what
 * lasts until the next visit.
 *
 * @param shares of each point among all; they sum to 1
 */
export function remember(
  belief: Belief,
  points: readonly WeighedPoint[],
  shares: ReadonlyMap<Point, number>,
  twin: string,
  before: Memory | undefined,
): Memory {
  const n = belief.mean.length
  const kept = points.flatMap(({ point, evidence }) => {
    const share = shares.get(point) ?? 0
    return share > NEGLIGIBLE ? [{ evidence, share }] : []
  })
  const total = kept.reduce((sum, { share }) => sum + share, 0)
  const mean = new Float64Array(n)
  const second = new Float64Array(n * n)
  for (const { evidence, share } of kept) {
    const { cross, pull, triangle } = evidence
    const rows = pull.length
    const weight = share / total
    const row = (a: number) => cross.subarray(a * rows, (a + 1) * rows)
    const here = belief.mean.map((m, a) => m + dot(row(a), pull))
    for (let a = 0; a < n; a++) {
      mean[a]! += weight * here[a]!
      const solvedRow = solved(triangle, row(a))
      for (let b = 0; b <= a; b++) {
        const covariance = belief.covariance[a * n + b]! - dot(solvedRow, row(b))
        second[a * n + b]! += weight * (covariance + here[a]! * here[b]!)
      }
    }
  }
  const lasting = belief.names.flatMap((_, i) => (belief.lasting[i] ? [i] : []))
  const covariance = (i: number, j: number) => second[Math.max(i, j) * n + Math.min(i, j)]! - mean[i]! * mean[j]!
  return {
    version: 1,
    twin,
    visits: (before?.visits ?? 0) + 1,
    names: lasting.map((i) => belief.names[i]!),
    mean: lasting.map((i) => mean[i]!),
    covariance: lasting.map((i) => lasting.map((j) => covariance(i, j))),
  }
}

/** Points less probable than this teach nothing worth its time. */
const NEGLIGIBLE = 3e-3
