import { readFile } from 'node:fs/promises'
import { expect, type Page, test } from '@playwright/test'
import { enter, field, logLines, openStart } from './field-app.ts'

test('[property] everything goes into one file and comes back whole on another device', async ({ page, browser }) => {
  await openStart(page)
  await page.getByRole('link', { name: 'New system' }).click()
  await page.getByLabel('Name, or where it stands').fill('Test cellar')
  await page.getByRole('button', { name: 'Begin the visit' }).click()
  await enter(page, 'reading-suction-pressure', '69')
  await expect(logLines(page)).toHaveCount(2)
  await page.getByRole('link', { name: 'The system and its visits' }).click()
  await page.getByRole('link', { name: 'All systems' }).click()
  await expect(page.getByText('3 entries are in no export yet.')).toBeVisible()
  const json = await exported(page)
  await expect(page.getByText('Everything entered here is in an export.')).toBeVisible()
  await page.reload()
  await expect(page.getByText('Everything entered here is in an export.')).toBeVisible()

  const other = await (await browser.newContext()).newPage()
  await openStart(other)
  await takeIn(other, json)
  await expect(other.getByRole('status')).toContainText(['Systems added: 1.'])
  await other.getByRole('link', { name: /^Test cellar/ }).click()
  await other.locator('.visit-row').click()
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
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Export everything' }).click(),
  ])
  expect(download.suggestedFilename()).toMatch(/^chargewright-\d{4}-\d\d-\d\d\.archive\.json$/)
  return readFile(await download.path(), 'utf8')
}

async function takeIn(page: Page, json: string): Promise<void> {
  const file = { name: 'a.archive.json', mimeType: 'application/json', buffer: Buffer.from(json) }
  await page.getByLabel('Take in a file').setInputFiles(file)
}
