/** A stream of random numbers that a seed repeats (mulberry32). */
export interface Random {
  readonly uniform: (low: number, high: number) => number
  readonly normal: (mean: number, sd: number) => number
  readonly one: <T>(of: readonly T[]) => T
  readonly chance: (probability: number) => boolean
  /** A factor around 1, log-normal and cut off at two and a half standard deviations. */
  readonly factor: (sd: number) => number
  /** A number for the seed of a stream of its own. */
  readonly seed: () => number
}

export function seeded(seed: number): Random {
  let state = seed | 0
  const next = () => {
    state = (state + 0x6d2b79f5) | 0
    let t = Math.imul(state ^ (state >>> 15), 1 | state)
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296
  }
  const uniform = (low: number, high: number) => low + (high - low) * next()
  const normal = (mean: number, sd: number) =>
    mean + sd * Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next())
  return {
    uniform,
    normal,
    one: (of) => of[Math.floor(next() * of.length)]!,
    chance: (probability) => next() < probability,
    factor: (sd) => Math.exp(sd * Math.min(Math.max(normal(0, 1), -2.5), 2.5)),
    seed: () => Math.floor(next() * 4294967296),
  }
}
