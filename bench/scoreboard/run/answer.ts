import { parentPort } from 'node:worker_threads'

/** In a worker: every message is a job, and gets one answer. */
export function answer<Job, Answer>(work: (job: Job) => Answer): void {
  parentPort?.on('message', (job: Job) => parentPort?.postMessage(work(job)))
}
