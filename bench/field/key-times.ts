import type { Page } from '@playwright/test'
import type { Phone } from './phone.ts'

const PRESSES = 200
const FIELD = 'reading-suction-pressure'

/** From the press of a key to the understood value in the document, three digits to a number. */
export async function keyTimes(phone: Phone, keys: 'keypad' | 'keyboard'): Promise<readonly number[]> {
  const page = await phone.page()
  await page.goto('/#/visit/demo-orifice-add')
  await page.locator('#finding').waitFor()
  await page.locator(`#${FIELD}`).tap()
  await page.locator('.keypad').waitFor()
  await page.evaluate(startMeasuring, FIELD)
  for (let i = 0; i < PRESSES; i++) {
    if (i % 3 === 0) await page.locator(`#${FIELD}`).evaluate((input: HTMLInputElement) => input.select())
    await press(page, keys, String((i % 9) + 1))
    await page.waitForFunction((count) => Reflect.get(window, 'times').length > count, i)
  }
  const times = await page.evaluate(() => Reflect.get(window, 'times'))
  await page.close()
  return times
}

function press(page: Page, keys: 'keypad' | 'keyboard', digit: string): Promise<void> {
  return keys === 'keypad' ? page.locator(`.keypad-key[data-place="digit-${digit}"]`).tap() : page.keyboard.press(digit)
}

function startMeasuring(field: string): void {
  const times: number[] = []
  let pressed: number | undefined
  const press = ({ timeStamp }: Event) => {
    pressed = timeStamp
  }
  for (const kind of ['pointerup', 'keydown']) addEventListener(kind, press, { capture: true })
  const says = document.getElementById(`${field}-says`)!
  new MutationObserver(() => {
    if (pressed === undefined || !says.textContent?.includes('reads as')) return
    times.push(performance.now() - pressed)
    pressed = undefined
  }).observe(says, { subtree: true, childList: true, characterData: true })
  Object.assign(window, { times })
}
