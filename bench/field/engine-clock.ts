import type { Page } from '@playwright/test'
import { SLOWER } from './phone.ts'

/**
 * A clock in the page that runs while the engine works on what it was asked. The engine's thread is not slowed with the page, so what it takes
 * here it takes as many times longer on the phone.
 */
export async function clockEngine(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const clock = { worked_ms: 0, begun: 0, open: 0 }
    const workedUntilNow = () => clock.worked_ms + (clock.open > 0 ? performance.now() - clock.begun : 0)
    Object.assign(window, { workedUntilNow })
    const own = Worker.prototype.postMessage
    const heard = new WeakSet<Worker>()
    Worker.prototype.postMessage = function (this: Worker, ...message: unknown[]) {
      if (!heard.has(this)) {
        heard.add(this)
        this.addEventListener('message', () => {
          if (--clock.open === 0) clock.worked_ms += performance.now() - clock.begun
        })
      }
      if (clock.open++ === 0) clock.begun = performance.now()
      return Reflect.apply(own, this, message)
    }
  })
}

/** What the phone takes longer than this machine for engine work between two readings of that clock. */
export const engineDelay = (from_ms: number, to_ms: number): number => (SLOWER - 1) * (to_ms - from_ms)

/** Reads the clock. */
export const engineWork = (page: Page): Promise<number> => page.evaluate(() => Reflect.get(window, 'workedUntilNow')())
