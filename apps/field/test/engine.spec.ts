import { expect, test } from '@playwright/test'
import { enter, field, logLines, newVisit, openDemo, openStart, word } from './field-app.ts'

test('[limit] an engine that cannot be loaded is told, entries are kept, and it can be tried again', async ({
  browser,
}) => {
  const page = await (await browser.newContext({ serviceWorkers: 'block' })).newPage()
  await page.route('**/engine.worker-*.js', (route) => route.abort())
  await newVisit(page)
  await expect(page.getByRole('alert')).toContainText('Every entry is kept.')
  await enter(page, 'reading-suction-pressure', '110')
  await expect(field(page, 'reading-suction-pressure')).toHaveValue('110.0')
  await expect(logLines(page)).toHaveCount(1)
  await page.unroute('**/engine.worker-*.js')
  await page.getByRole('button', { name: 'Try again' }).click()
  await expect(word(page)).toHaveText('cannot tell')
})

test('[property] while the engine works, the page takes entries, and says so once it is noticed', async ({ page }) => {
  await page.addInitScript(holdAnswers)
  await openStart(page)
  await page.goto('/#/visit/demo-orifice-add')
  await expect(page.getByText('Working it out …')).toBeVisible()
  await enter(page, 'reading-discharge-temperature', '150')
  await expect(field(page, 'reading-discharge-temperature')).toHaveValue('150.0')
  await page.evaluate(() => (window as unknown as { letGo: () => void }).letGo())
  await expect(word(page)).toHaveText('add')
  await expect(page.getByText('Working it out')).toHaveCount(0)
})

test('[property] entries in a row end in the finding of the last one', async ({ page }) => {
  await openDemo(page, 'demo-orifice-add')
  for (const line of ['60', '55', '50', '75']) await enter(page, 'reading-suction-temperature', line)
  await expect(word(page)).toHaveText('add')
  await enter(page, 'reading-suction-temperature', '46')
  await expect(word(page)).not.toHaveText('add')
})

/** Holds back every answer of a worker until it is let go. */
function holdAnswers(): void {
  const post = Worker.prototype.postMessage
  const held: (() => void)[] = []
  let isHeld = true
  Worker.prototype.postMessage = function (this: Worker, message: unknown) {
    if (isHeld) held.push(() => post.call(this, message))
    else post.call(this, message)
  }
  Object.assign(window, {
    letGo: () => {
      isHeld = false
      for (const go of held) go()
    },
  })
}

test('[limit] while the visits to a system are worked out, nothing is said of what they measured or taught', async ({
  page,
}) => {
  await openDemo(page, 'demo-orifice-add')
  await page.getByRole('link', { name: 'The system and its visits' }).click()
  await expect(page.locator('.visit-row .row-about')).toContainText('superheat')
  let goOn = () => {}
  const held = new Promise<void>((resolve) => (goOn = resolve))
  await page.route('**/engine.worker-*.js', async (route) => {
    await held
    await route.continue()
  })
  await page.reload()
  const working = page.getByText('Working it out …')
  await expect(working).toBeVisible()
  await expect(page.locator('.visit-row .row-about')).toHaveText('\u00a0')
  await expect(page.getByRole('region', { name: 'Learnt from earlier visits' })).toHaveCount(0)
  // It stands in the line of the heading, over nothing.
  const [says, heading] = [await working.boundingBox(), await page.locator('#history').boundingBox()]
  expect(says!.y + says!.height).toBeLessThanOrEqual(heading!.y + heading!.height + 1)
  goOn()
  await expect(page.locator('.visit-row .row-about')).toContainText('superheat')
})
