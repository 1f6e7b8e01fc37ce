import { DEVICES } from '../devices.ts'
import { inParallel, type Progress } from './in-parallel.ts'
import type { ScoredByAll, ScoreJob } from './score-cases.ts'

/** Cases of one job: small enough that all cores end together. */
const CHUNK = 40

/** @param cases per device */
export const scoreJobs = (
  what: Omit<ScoreJob, 'kind' | 'count' | 'seed'>,
  cases: number,
  seed: number,
): readonly ScoreJob[] =>
  DEVICES.flatMap((kind) =>
    Array.from({ length: Math.ceil(cases / CHUNK) }, (_, i) => ({
      ...what,
      kind,
      count: Math.min(CHUNK, cases - i * CHUNK),
      seed: seed + i,
    })),
  )

/** All cases of the jobs, each judged by all. */
export async function judged(jobs: readonly ScoreJob[], progress: Progress): Promise<readonly ScoredByAll[]> {
  const entry = `${import.meta.dirname}/score-cases.ts`
  return (await inParallel<ScoreJob, readonly ScoredByAll[]>(entry, jobs, progress)).flat()
}
