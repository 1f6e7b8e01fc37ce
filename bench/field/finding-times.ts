import type { Phone } from './phone.ts'

const READINGS = 40

/** The same entry, over and over, each time another value. */
export interface Entry {
  readonly field: string
  readonly value: (i: number) => string
}

export interface FindingTimes {
  /** From the key that enters a reading until the finding that counts with it is in the page. */
  readonly found_ms: readonly number[]
  /** Until the frame that shows it is drawn. */
  readonly drawn_ms: readonly number[]
}

/** A quick hand: from digit to digit, and on to the key that enters. */
const HAND = { between_ms: 120, toEnter_ms: 300 } as const

export async function findingTimes(phone: Phone, { field, value }: Entry): Promise<FindingTimes> {
  const page = await phone.page()
  await page.goto('/#/visit/demo-orifice-add')
  await page.reload()
  await page.locator('#finding').waitFor()
  await page.waitForTimeout(3000)
  const times: Found[] = []
  for (let i = 0; i < READINGS; i++) {
    await page.locator(field).focus()
    await page.keyboard.type(value(i), { delay: HAND.between_ms })
    await page.waitForTimeout(HAND.toEnter_ms)
    await page.evaluate(watchFinding)
    await page.keyboard.press('Enter')
    await page.waitForFunction(() => Reflect.has(window, 'found'))
    times.push(await page.evaluate(() => Reflect.get(window, 'found')))
    // The pictures are drawn after it.
    await page.waitForTimeout(2000)
  }
  await page.close()
  return { found_ms: times.map(({ found_ms }) => found_ms), drawn_ms: times.map(({ drawn_ms }) => drawn_ms) }
}

interface Found {
  readonly found_ms: number
  readonly drawn_ms: number
}

/** Notes when the picture of the finding changes after the next press of Enter, and when that is on the glass. */
function watchFinding(): void {
  Reflect.deleteProperty(window, 'found')
  const enter = ({ key, timeStamp }: KeyboardEvent) => {
    if (key !== 'Enter') return
    removeEventListener('keydown', enter, { capture: true })
    const seen = new MutationObserver(() => {
      seen.disconnect()
      const found_ms = performance.now() - timeStamp
      const noteFrame = () => Object.assign(window, { found: { found_ms, drawn_ms: performance.now() - timeStamp } })
      requestAnimationFrame(() => setTimeout(noteFrame))
    })
    const watched = { subtree: true, childList: true, characterData: true, attributes: true }
    seen.observe(document.querySelector('.band-drawing')!, watched)
  }
  addEventListener('keydown', enter, { capture: true })
}
