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

/** The same in processor time of this process, for jobs too long to be left alone by a shared machine. */
export function processorMilliseconds(job: () => unknown, rounds: number): number {
  let best = Number.POSITIVE_INFINITY
  for (let k = 0; k < rounds; k++) {
    const start = process.cpuUsage()
    job()
    const { user, system } = process.cpuUsage(start)
    best = Math.min(best, (user + system) / 1e3)
  }
  return best
}
