/** A share with the bounds of its two-sided interval. */
export interface Interval {
  readonly low: number
  readonly high: number
}

/**
 * Exact interval of a share: all shares under which neither so few nor so many hits would be rarer than α/2. Found by
 * bisection in the binomial sum that defines it, which needs no quantile of the beta distribution.
 *
 * @param hits 0 to trials
 * @param trials 0 and more; with 0 nothing is known, and the interval is 0 to 1
 * @param confidence two-sided, in (0, 1)
 * @source Clopper & Pearson 1934, Biometrika 26, 404-413
 */
export function exactInterval(hits: number, trials: number, confidence = 0.95): Interval {
  const tail = (1 - confidence) / 2
  return {
    low: hits === 0 ? 0 : shareWhere((p) => 1 - atMost(hits - 1, trials, p) > tail),
    high: hits === trials ? 1 : shareWhere((p) => atMost(hits, trials, p) < tail),
  }
}

/** Probability of at most `hits` in `trials`, each with probability p. */
export function atMost(hits: number, trials: number, p: number): number {
  if (p === 0) return 1
  const odds = Math.log(p) - Math.log1p(-p)
  let ln = trials * Math.log1p(-p)
  let sum = Math.exp(ln)
  for (let k = 1; k <= hits; k++) {
    ln += Math.log((trials - k + 1) / k) + odds
    sum += Math.exp(ln)
  }
  return Math.min(sum, 1)
}

/** The least share at which a condition holds that stays true above it. */
function shareWhere(holds: (p: number) => boolean): number {
  let [low, high] = [0, 1]
  for (let i = 0; i < 52; i++) {
    const middle = (low + high) / 2
    if (holds(middle)) high = middle
    else low = middle
  }
  return (low + high) / 2
}
