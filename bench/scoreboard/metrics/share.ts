import { exactInterval, type Interval } from './exact-interval.ts'
import type { Scored } from './scored.ts'

/** So many of so many, with the exact 95 % interval of the share. */
export interface Share extends Interval {
  readonly hits: number
  readonly of: number
  /** NaN where there is nothing to take a share of. */
  readonly share: number
}

/** A rate: over which cases it is taken, and which of them count. */
export interface Rate {
  readonly title: string
  readonly over: (scored: Scored) => boolean
  readonly counts: (scored: Scored) => boolean
}

export function shareOf(scored: readonly Scored[], { over, counts }: Pick<Rate, 'over' | 'counts'>): Share {
  const all = scored.filter(over)
  return share(all.filter(counts).length, all.length)
}

export const share = (hits: number, of: number): Share => ({ hits, of, share: hits / of, ...exactInterval(hits, of) })
