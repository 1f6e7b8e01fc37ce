import { DEVICES } from '../devices.ts'
import { inParallel, type Progress } from '../run/in-parallel.ts'
import { HIDDEN, type LoopResult, type LoopRun, loopResults } from './loop-result.ts'
import type { LoopJob } from './run-loops.ts'

/** Plants of one job: small enough that all cores end together. */
const CHUNK = 10

/** @param plants per device and kind of hidden trouble */
export async function closedLoops(plants: number, seed: number, progress: Progress): Promise<readonly LoopResult[]> {
  const jobs = HIDDEN.flatMap((hidden) =>
    DEVICES.flatMap((kind) =>
      Array.from({ length: Math.ceil(plants / CHUNK) }, (_, i) => ({
        kind,
        hidden,
        first: i * CHUNK,
        count: Math.min(CHUNK, plants - i * CHUNK),
        seed,
      })),
    ),
  )
  const entry = `${import.meta.dirname}/run-loops.ts`
  return loopResults((await inParallel<LoopJob, readonly LoopRun[]>(entry, jobs, progress)).flat())
}
