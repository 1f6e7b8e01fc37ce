/** A stream of random numbers that a seed repeats (mulberry32). */
export interface Random {
  readonly uniform: (low: number, high: number) => number
  readonly normal: (mean: number, sd: number) => number
  readonly one: <T>(of: readonly T[]) => T
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
  return {
    uniform,
    normal: (mean, sd) => mean + sd * Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next()),
    one: (of) => of[Math.floor(next() * of.length)]!,
  }
}
