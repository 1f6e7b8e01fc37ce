/**
 * Time of one call, ns: the quartile nearest the fastest of many rounds. The machine is shared, so the fast quarter says
 * what the code takes and the median what the machine was doing.
 */
export function nanosecondsPerCall(calls: number, round: () => void, rounds = 60): number {
  const times: number[] = []
  for (let k = 0; k < rounds; k++) {
    const start = performance.now()
    round()
    times.push(((performance.now() - start) * 1e6) / calls)
  }
  times.sort((a, b) => a - b)
  return times[times.length >> 2]!
}

/** Milliseconds of a job that is too long to repeat often: the fastest of a few. */
export function milliseconds(job: () => void, rounds = 7): number {
  let best = Number.POSITIVE_INFINITY
  for (let k = 0; k < rounds; k++) {
    const start = performance.now()
    job()
    best = Math.min(best, performance.now() - start)
  }
  return best
}

/** Somewhere to put results, so that nothing is optimised away. */
export const sink = new Float64Array(1)

/** A fixed spread of numbers in 0 … 1 without a pattern, the same on every run. */
export const spread = (count: number): Float64Array =>
  Float64Array.from({ length: count }, (_, k) => ((k + 0.5) * 0.7548776662466927) % 1)
