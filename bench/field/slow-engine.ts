import type { Page } from '@playwright/test'

/**
 * Slows the engine as the browser slows the page: its thread rests after every task for as long as the task takes longer
 * on the phone, before it hands over the answer. What a browser calls slowing the processor slows the thread of the page
 * alone: `slowedBy` measures it.
 */
export async function slowEngine(page: Page, slower: number): Promise<void> {
  await page.addInitScript((times) => {
    const atWork = `
      const begun = new Map()
      const listen = addEventListener.bind(globalThis)
      const post = postMessage.bind(globalThis)
      globalThis.addEventListener = (kind, act, options) =>
        listen(kind, kind !== 'message' ? act : (event) => {
          const now = performance.now()
          begun.set(event.data.turn, now)
          return act(event)
        }, options)
      globalThis.postMessage = (answer) => {
        const until = performance.now() + ${times - 1} * (performance.now() - begun.get(answer.turn))
        while (performance.now() < until) {}
        post(answer)
      }`
    const script = (text: string) => URL.createObjectURL(new Blob([text], { type: 'text/javascript' }))
    const Own = Worker
    class Slowed extends Own {
      constructor(url: string | URL, options?: WorkerOptions) {
        super(script(`import '${script(atWork)}'; import '${url}'`), options)
      }
    }
    Object.assign(window, { Worker: Slowed })
  }, slower)
}

/** How many times longer a loop takes on the page, and in the engine, than without the browser's own slowing. */
export async function slowedBy(page: Page, slow: (rate: number) => Promise<unknown>, rate: number) {
  const shortest = async (run: () => Promise<number>) => {
    const times: number[] = []
    for (let i = 0; i < 7; i++) times.push(await run())
    return Math.min(...times)
  }
  const [engine] = page.workers()
  const both = async () =>
    [await shortest(() => page.evaluate(LOOP)), await shortest(() => engine!.evaluate(LOOP))] as const
  await slow(1)
  const [page_ms, engine_ms] = await both()
  await slow(rate)
  const [slowPage_ms, slowEngine_ms] = await both()
  return { page: slowPage_ms / page_ms, engine: slowEngine_ms / engine_ms }
}

const LOOP = `(() => {
  const begun = performance.now()
  let sum = 0
  for (let i = 0; i < 3e6; i++) sum += Math.sqrt(i)
  return sum > 0 ? performance.now() - begun : 0
})()`
