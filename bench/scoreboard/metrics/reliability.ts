import { isAnswered, isRight, type Scored } from './scored.ts'
import { type Share, share } from './share.ts'

/** Answers given with about the same probability, and how many of them were right. */
export interface ReliabilityBin extends Share {
  readonly from: number
  readonly to: number
  /** Mean of the probabilities stated. */
  readonly stated: number
}

/** Answers below a half are rare and lie together; above, where acts are decided, the bins are narrow. */
export const BIN_EDGES = [0, 0.5, 0.6, 0.7, 0.8, 0.9, 0.95, 1] as const

/** Stated against met: only answers that carry a probability; bins without any are left out. */
export function reliability(scored: readonly Scored[]): readonly ReliabilityBin[] {
  const answers = scored.filter((s) => isAnswered(s) && s.verdict.sure !== undefined)
  return BIN_EDGES.slice(1).flatMap((to, i) => {
    const from = BIN_EDGES[i]!
    const inside = answers.filter(
      ({ verdict: { sure = 0 } }) => sure >= from && (sure < to || (to === 1 && sure === 1)),
    )
    if (inside.length === 0) return []
    const stated = inside.reduce((sum, { verdict }) => sum + (verdict.sure ?? 0), 0) / inside.length
    return [{ from, to, stated, ...share(inside.filter(isRight).length, inside.length) }]
  })
}
