import { clockEngine, engineDelay } from './engine-clock.ts'
import type { Phone } from './phone.ts'

const READINGS = 40
const FIELD = '#reading-suction-temperature'

/** From the key that enters a reading to the finding that counts with it. */
export async function findingTimes(phone: Phone): Promise<readonly number[]> {
  const page = await phone.page()
  await clockEngine(page)
  await page.goto('/#/visit/demo-orifice-add')
  await page.reload()
  await page.locator('#finding').waitFor()
  await page.waitForTimeout(3000)
  const times: number[] = []
  for (let i = 0; i < READINGS; i++) {
    await page.locator(FIELD).focus()
    await page.keyboard.type(`${60 + (i % 8)}.${i % 7}`)
    await page.evaluate(watchFinding)
    await page.keyboard.press('Enter')
    await page.waitForFunction(() => Reflect.has(window, 'found'))
    const { took_ms, from_ms, to_ms }: Found = await page.evaluate(() => Reflect.get(window, 'found'))
    times.push(took_ms + engineDelay(from_ms, to_ms))
    // The pictures are drawn after it.
    await page.waitForTimeout(1500)
  }
  await page.close()
  return times
}

interface Found {
  readonly took_ms: number
  /** The clock of the engine at the press and at the finding. */
  readonly from_ms: number
  readonly to_ms: number
}

/** Notes when the value in the picture of the finding changes after the next press of Enter. */
function watchFinding(): void {
  Reflect.deleteProperty(window, 'found')
  const worked = (): number => Reflect.get(window, 'workedUntilNow')()
  const enter = ({ key, timeStamp }: KeyboardEvent) => {
    if (key !== 'Enter') return
    removeEventListener('keydown', enter, { capture: true })
    const from_ms = worked()
    const seen = new MutationObserver(() => {
      seen.disconnect()
      Object.assign(window, { found: { took_ms: performance.now() - timeStamp, from_ms, to_ms: worked() } })
    })
    seen.observe(document.querySelector('.band-drawing')!, { subtree: true, childList: true, characterData: true })
  }
  addEventListener('keydown', enter, { capture: true })
}
