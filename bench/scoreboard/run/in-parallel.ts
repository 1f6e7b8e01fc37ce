import { mkdtempSync } from 'node:fs'
import { availableParallelism, tmpdir } from 'node:os'
import { join } from 'node:path'
import { Worker } from 'node:worker_threads'
import { buildSync } from 'esbuild'

/** Told the share that is done. */
export type Progress = (share: number) => void

/**
 * Jobs on all cores, one worker thread each, answers in the order of the jobs. The worker is bundled as an app would be:
 * running TypeScript as it is makes every closure dearer.
 *
 * @param entry file that answers each message with one message, by `answer`
 */
export async function inParallel<Job, Answer>(
  entry: string,
  jobs: readonly Job[],
  progress: Progress,
): Promise<readonly Answer[]> {
  const outfile = join(mkdtempSync(join(tmpdir(), 'scoreboard-')), 'worker.mjs')
  buildSync({ entryPoints: [entry], bundle: true, format: 'esm', platform: 'node', outfile, logLevel: 'error' })
  const answers: Answer[] = []
  let [next, done] = [0, 0]
  const oneCore = () =>
    new Promise<void>((resolve, reject) => {
      const worker = new Worker(outfile)
      let current = -1
      const hand = () => {
        current = next++
        if (current < jobs.length) worker.postMessage(jobs[current])
        else worker.terminate().then(() => resolve(), reject)
      }
      worker.on('message', (answer: Answer) => {
        answers[current] = answer
        progress(++done / jobs.length)
        hand()
      })
      worker.on('error', reject)
      hand()
    })
  await Promise.all(Array.from({ length: Math.min(availableParallelism(), jobs.length) }, oneCore))
  return answers
}
