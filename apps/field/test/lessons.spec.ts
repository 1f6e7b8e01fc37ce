import { readFile } from 'node:fs/promises'
import { expect, type Page, test } from '@playwright/test'
import { openStart } from './field-app.ts'

test('[property] what visits taught is believed by the next one, forgotten in one tap, and brought back', async ({
  page,
}) => {
  await threeVisits(page)
  await page.getByRole('link', { name: /^Own bungalow/ }).click()
  const learnt = page.getByRole('region', { name: 'Learnt from earlier visits' })
  await expect(learnt).toContainText('Known from 3 earlier visits')
  await page.locator('.visit-row').first().click()
  await expect(learnt).toContainText('Known from 2 earlier visits')
  await learnt.getByRole('button', { name: /^Forget it/ }).click()
  await expect(learnt).toContainText('What earlier visits had taught was forgotten.')
  await page.reload()
  await expect(learnt).toContainText('was forgotten.')
  await page.getByRole('link', { name: 'The system and its visits' }).click()
  await expect(learnt).toContainText('Known from 1 earlier visit:')
  await page.getByRole('button', { name: 'Undo the last entry' }).click()
  await expect(learnt).toContainText('Known from 3 earlier visits')
  await learnt.getByRole('button', { name: /^Forget it/ }).focus()
  await page.keyboard.press('Enter')
  await expect(learnt).toContainText('was forgotten.')
  await learnt.getByRole('button', { name: 'Bring it back' }).click()
  await expect(learnt).toContainText('Known from 3 earlier visits')
})

test('[property] it goes with the export of everything to another device, what was forgotten too', async ({
  page,
  browser,
}) => {
  await threeVisits(page)
  await page.getByRole('link', { name: /^Own bungalow/ }).click()
  const learnt = (on: Page) => on.getByRole('region', { name: 'Learnt from earlier visits' })
  await page.locator('.visit-row').first().click()
  await learnt(page)
    .getByRole('button', { name: /^Forget it/ })
    .click()
  await expect(learnt(page)).toContainText('was forgotten.')
  await page.goto('/#/')
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Export everything' }).click(),
  ])
  const other = await (await browser.newContext()).newPage()
  await openStart(other)
  await takeIn(other, await readFile(await download.path(), 'utf8'))
  await expect(other.getByText('Visits added: 3.')).toBeVisible()
  await other.getByRole('link', { name: /^Own bungalow/ }).click()
  await expect(learnt(other)).toContainText('Known from 1 earlier visit:')
})

/** Three visits to a system of one's own, on three days, each with readings that can be weighed. */
async function threeVisits(page: Page): Promise<void> {
  await openStart(page)
  const json = await readFile(new URL('../../../examples/orifice-hold.json', import.meta.url), 'utf8')
  for (const day of [3, 4, 5]) {
    const own = json
      .replaceAll('demo-orifice-hold', `own-${day}`)
      .replaceAll('2026-06-02', `2026-06-0${day}`)
      .replace('Demo bungalow, north unit', 'Own bungalow')
    await takeIn(page, own)
    await expect(page.getByText('The visit was taken in.')).toBeVisible()
    await page.reload()
  }
}

async function takeIn(page: Page, json: string): Promise<void> {
  const buffer = Buffer.from(json)
  await page.getByLabel('Take in a file').setInputFiles({ name: 'a.json', mimeType: 'application/json', buffer })
}
