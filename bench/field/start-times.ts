import type { Phone } from './phone.ts'

const STARTS = 12

/** From the navigation to the frame that first shows an element, with everything on the phone already. */
export async function startTimes(phone: Phone, address: string, first: string): Promise<readonly number[]> {
  const page = await phone.page()
  await page.addInitScript((sought) => {
    const look = () => {
      if (document.querySelector(sought)) Object.assign(window, { shownAt: performance.now() })
      else requestAnimationFrame(look)
    }
    requestAnimationFrame(look)
  }, first)
  const times: number[] = []
  for (let i = 0; i < STARTS; i++) {
    await page.goto('about:blank')
    await page.goto(address)
    await page.waitForFunction(() => Reflect.has(window, 'shownAt'))
    times.push(await page.evaluate(() => Reflect.get(window, 'shownAt')))
  }
  await page.close()
  return times
}
