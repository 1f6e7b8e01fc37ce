import { expect, type Page, test } from '@playwright/test'
import { field, logLines, openDemo, openStart, sentence, word } from './field-app.ts'

// The public protocol's grid gives about 13 °F at 95 °F outdoors and 67 °F wet bulb; this superheat lies far above it.
test('[property] a whole orifice visit is typed by keyboard alone, from nothing to a dose', async ({ page }) => {
  await openStart(page)
  await page.getByRole('button', { name: 'New visit' }).focus()
  await page.keyboard.press('Enter')
  await expect(word(page)).toHaveText('cannot tell')

  await tabTo(page, 'system-name')
  await type(page, 'Test roof, unit 1')
  await expect(field(page, 'system-refrigerant')).toBeFocused()
  await type(page, 'r410a')
  await choose(page, 'fixed orifice')
  await choose(page, 'comfort cooling')
  await tabTo(page, 'system-nominalCapacity')
  await type(page, '3 ton')
  await choose(page, 'no')

  await tabTo(page, 'reading-return-air-dry-bulb')
  for (const typed of ['80', '67']) await type(page, typed)
  await tabTo(page, 'reading-airflow')
  await type(page, '1180 CFM')
  await tabTo(page, 'reading-suction-pressure')
  for (const typed of ['110', '63 F']) await type(page, typed)
  await tabTo(page, 'reading-condenser-entering-air')
  await type(page, '35 °C')
  await tabTo(page, 'reading-liquid-pressure')
  for (const typed of ['342 psig', '101.5']) await type(page, typed)

  // What the finding still asks for is reached by its own button, with the focus on the field.
  await expect(word(page)).toHaveText('cannot tell')
  await page.getByRole('button', { name: 'Answer: running without a change' }).focus()
  await page.keyboard.press('Enter')
  await expect(page.locator('#observation-running-time')).toBeFocused()
  await page.keyboard.press('Enter')

  await expect(word(page)).toHaveText('add')
  await expect(sentence(page)).toHaveText(/^Add [\d.]+\soz, as vapour, at the suction service port$/)
  await expect(logLines(page)).toHaveCount(15)
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Test roof, unit 1')

  // The reason unfolds down to the typed entry, and from there to the log.
  const reason = page.locator('.finding .evidence-list > li').first()
  await unfold(page, reason.locator('summary').first())
  await unfold(page, reason.locator('summary', { hasText: /^Superheat/ }).nth(1))
  await unfold(page, reason.locator('summary', { hasText: 'typed “63 F”' }))
  await reason.getByRole('button', { name: 'Show the entry in the log' }).first().press('Enter')
  await expect(logLines(page).filter({ hasText: '63 F' })).toBeFocused()
})

test('[property] the walk leaves out what such a system has no place for', async ({ page }) => {
  await openDemo(page, 'demo-orifice-add')
  await expect(field(page, 'reading-airflow')).toBeVisible()
  await expect(field(page, 'reading-box-temperature')).toHaveCount(0)
  await expect(field(page, 'reading-evaporator-outlet-temperature')).toHaveCount(0)
  await openDemo(page, 'demo-receiver-low-load')
  await expect(field(page, 'reading-box-temperature')).toBeVisible()
  await expect(field(page, 'reading-evaporator-outlet-temperature')).toBeVisible()
})

async function tabTo(page: Page, id: string): Promise<void> {
  for (let presses = 0; presses < 60; presses++) {
    if ((await page.evaluate(() => document.activeElement?.id)) === id) return
    await page.keyboard.press('Tab')
  }
  throw new Error(`the Tab key never reached ${id}`)
}

async function type(page: Page, text: string): Promise<void> {
  await page.keyboard.type(text)
  await page.keyboard.press('Enter')
}

/** Goes on with the Tab key to the next answer of that name and takes it. */
async function choose(page: Page, answer: string): Promise<void> {
  for (let presses = 0; presses < 40; presses++) {
    if ((await page.evaluate(() => document.activeElement?.textContent)) === answer) {
      await page.keyboard.press('Space')
      await expect(page.locator(':focus')).toHaveAttribute('aria-pressed', 'true')
      return
    }
    await page.keyboard.press('Tab')
  }
  throw new Error(`the Tab key never reached “${answer}”`)
}

async function unfold(page: Page, summary: ReturnType<Page['locator']>): Promise<void> {
  await summary.focus()
  await page.keyboard.press('Enter')
}
