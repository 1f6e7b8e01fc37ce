import { atMost, type Interval } from './exact-interval.ts'

export interface Quantile extends Interval {
  readonly value: number
  readonly of: number
}

/**
 * A quantile with a 95 % interval that holds whatever the distribution: the number of values below the true quantile is
 * binomial, so two of the values themselves bound it. At the ends of a small sample the bound is the last value.
 *
 * @param values in any order; undefined when there is none
 * @source value: Hyndman & Fan 1996, definition 7; interval: order statistics, David & Nagaraja, Order Statistics, §7.1
 */
export function quantile(values: readonly number[], share: number): Quantile | undefined {
  const sorted = values.toSorted((a, b) => a - b)
  const n = sorted.length
  if (n === 0) return undefined
  const place = share * (n - 1)
  const below = Math.floor(place)
  const value = sorted[below]! + (place - below) * ((sorted[below + 1] ?? sorted[below]!) - sorted[below]!)
  // Ranks r < s such that P(B < r) ≤ 2.5 % and P(B ≥ s) ≤ 2.5 % for B ~ Bin(n, share).
  let r = 0
  while (r < n && atMost(r, n, share) <= 0.025) r++
  let s = n
  while (s > 1 && 1 - atMost(s - 2, n, share) <= 0.025) s--
  return { value, low: sorted[Math.max(r - 1, 0)]!, high: sorted[s - 1]!, of: n }
}
