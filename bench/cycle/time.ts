/** Milliseconds of one call: the fastest of many, because the machine is shared. */
export function milliseconds(job: () => unknown, rounds: number): number {
  let best = Number.POSITIVE_INFINITY
  for (let k = 0; k < rounds; k++) {
    const start = performance.now()
    job()
    best = Math.min(best, performance.now() - start)
  }
  return best
}
