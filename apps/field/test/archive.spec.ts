import { readFile } from 'node:fs/promises'
import { expect, type Page, test } from '@playwright/test'
import { enter, pick, press } from './by-keyboard.ts'
import { field, key, logLines, openStart } from './field-app.ts'

test('[property] by keyboard alone everything goes into one file and comes back whole on another device', async ({
  page,
  browser,
}) => {
  await openStart(page)
  await press(page.getByRole('link', { name: 'New system' }))
  await enter(page.getByLabel('Name, or where it stands'), 'Test cellar')
  await press(key(page, 'Begin the visit'))
  await enter(field(page, 'reading-suction-pressure'), '69')
  await expect(logLines(page)).toHaveCount(2)
  await press(page.getByRole('link', { name: 'The system and its visits' }))
  await press(page.getByRole('link', { name: 'All systems' }))
  await expect(page.getByText('3 entries are in no export yet.')).toBeVisible()
  const json = await exported(page)
  await expect(page.getByText('Everything entered here is in an export.')).toBeVisible()
  await page.reload()
  await expect(page.getByText('Everything entered here is in an export.')).toBeVisible()

  const other = await (await browser.newContext()).newPage()
  await openStart(other)
  await takeIn(other, json)
  await expect(other.getByRole('status')).toContainText(['Systems added: 1.'])
  await press(other.getByRole('link', { name: /^Test cellar/ }))
  await press(other.locator('.visit-row'))
  await expect(field(other, 'reading-suction-pressure')).toHaveValue('69.0')
  await other.goto('/#/')
  await takeIn(other, json)
  await expect(other.getByText('Everything in this file is here already.')).toBeVisible()
})

test('[limit] a damaged file is refused with its place, and nothing changes', async ({ page }) => {
  await openStart(page)
  const json = await exported(page)
  const place = json.indexOf('"kind":"reading"')
  await takeIn(page, `${json.slice(0, place)}"kind":"raeding"${json.slice(place + 16)}`)
  const alert = page.getByRole('alert')
  await expect(alert).toContainText('nothing here has changed')
  await expect(alert).toContainText(/visits\[\d+\]\.events\[\d+\]\.kind/)
  await takeIn(page, json.slice(0, 5000))
  await expect(alert).toContainText('archive file: cannot read')
  await expect(page.getByText('No system of your own yet')).toBeVisible()
})

async function exported(page: Page): Promise<string> {
  const [download] = await Promise.all([page.waitForEvent('download'), press(key(page, 'Export everything'))])
  expect(download.suggestedFilename()).toMatch(/^chargewright-\d{4}-\d\d-\d\d\.archive\.json$/)
  return readFile(await download.path(), 'utf8')
}

async function takeIn(page: Page, json: string): Promise<void> {
  const file = { name: 'a.archive.json', mimeType: 'application/json', buffer: Buffer.from(json) }
  await pick(page.getByLabel('Take in a file'), file)
}
