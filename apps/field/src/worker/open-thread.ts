import type { Listener, Thread } from './engine.ts'
import type { Answer } from './protocol.ts'

/** Starts the engine in a worker of the browser. */
export function openThread({ answered, broke }: Listener): Thread {
  const worker = new Worker(new URL('./engine.worker.ts', import.meta.url), { type: 'module', name: 'engine' })
  worker.addEventListener('message', ({ data }: MessageEvent<Answer>) => answered(data))
  worker.addEventListener('messageerror', () => broke('an answer could not be read'))
  worker.addEventListener('error', ({ message }) => broke(message || 'a part of the app could not be loaded'))
  return { post: (ask) => worker.postMessage(ask), end: () => worker.terminate() }
}
