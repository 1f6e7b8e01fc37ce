import { readFile } from 'node:fs/promises'
import { checkVisitFile } from '@chargewright/visit'
import { expect, type Page, test } from '@playwright/test'
import { enter, field, logLines, newVisit, openDemo, openStart, word } from './field-app.ts'

test.use({ serviceWorkers: 'allow' })

test('[property] an exported visit is a valid visit file and comes back whole on another device', async ({
  page,
  browser,
}) => {
  await newVisit(page)
  await enter(page, 'system-name', 'Test roof, unit 1')
  await enter(page, 'system-refrigerant', 'R-410A')
  await enter(page, 'reading-suction-pressure', '7,6 bar')
  await enter(page, 'reading-suction-pressure', '110')
  await page.getByRole('button', { name: 'Undo the last entry' }).click()
  await expect(field(page, 'reading-suction-pressure')).toHaveValue('110.2')
  const { name, json } = await exported(page)
  expect(name).toBe('test-roof-unit-1.visit.json')
  expect(checkVisitFile(JSON.parse(json))).toMatchObject({ ok: true })

  const other = await (await browser.newContext()).newPage()
  await openStart(other)
  await takeIn(other, json)
  await expect(other.getByText('The visit was taken in.')).toBeVisible()
  await other.getByRole('link', { name: /^Test roof, unit 1/ }).click()
  await other.locator('.visit-row').click()
  await expect(logLines(other)).toHaveCount(4)
  await expect(field(other, 'reading-suction-pressure')).toHaveValue('110.2')
  expect((await exported(other)).json).toBe(json)
})

test('[property] a file that went on elsewhere adds what is new; one that parted stands beside ours', async ({
  page,
}) => {
  await newVisit(page)
  await enter(page, 'system-name', 'Twice')
  await enter(page, 'reading-suction-pressure', '110')
  await expect(logLines(page)).toHaveCount(2)
  const { json } = await exported(page)
  const file = JSON.parse(json)
  const note = { id: 'elsewhere', at: '2026-01-31T14:05:00Z', kind: 'note', text: 'made elsewhere' }
  const longer = JSON.stringify({ ...file, events: [...file.events, note] })

  await openStart(page)
  await takeIn(page, json)
  await expect(page.getByText('brings nothing new')).toBeVisible()
  await takeIn(page, longer)
  await expect(page.getByText('the entries that were new have been added')).toBeVisible()
  await takeIn(page, JSON.stringify({ ...file, events: [note] }))
  await expect(page.getByText('as a second visit, beside it')).toBeVisible()
  await page.getByRole('link', { name: /Twice.*2 visits/ }).click()
  await page
    .locator('.visit-row')
    .and(page.locator(`[href="#/visit/${file.id}"]`))
    .click()
  await expect(logLines(page)).toHaveCount(3)
})

test('[limit] a file that is no visit is refused with every problem named, and nothing changes', async ({ page }) => {
  await openStart(page)
  await takeIn(page, '{"format": "chargewright-visit", "version": 1, "id": "x", "events": [{"kind": "reading"}, 7]}')
  const alert = page.getByRole('alert')
  await expect(alert).toContainText('The file was not taken in, and nothing here has changed.')
  await expect(alert).toContainText('events[0].id: missing')
  await expect(alert).toContainText('events[1]: cannot read “7”')
  await takeIn(page, 'not json at all')
  await expect(alert).toContainText('cannot read “not json at all”')
  await expect(page.getByText('No system of your own yet')).toBeVisible()
})

test('[property] the invented systems go and come back in one tap, with what was entered in them', async ({ page }) => {
  await openStart(page)
  await page.getByRole('link', { name: /Demo hill cabin/ }).click()
  await page.locator('.visit-row').click()
  await enter(page, 'reading-discharge-temperature', '150')
  await expect(field(page, 'reading-discharge-temperature')).toHaveValue('150.0')
  await page.getByRole('link', { name: 'The system and its visits' }).click()
  await page.getByRole('link', { name: 'All systems' }).click()
  await page.getByRole('button', { name: 'Take the invented systems away' }).click()
  await expect(page.getByRole('link', { name: /Demo/ })).toHaveCount(0)
  await page.reload()
  await expect(page.getByRole('link', { name: /Demo/ })).toHaveCount(0)
  await page.getByRole('button', { name: 'Bring the invented systems back' }).click()
  await page.getByRole('link', { name: /Demo hill cabin/ }).click()
  await page.locator('.visit-row').click()
  await expect(field(page, 'reading-discharge-temperature')).toHaveValue('150.0')
  await expect(word(page)).toHaveText('not ready')
})

async function exported(page: Page): Promise<{ readonly name: string; readonly json: string }> {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Export' }).click(),
  ])
  return { name: download.suggestedFilename(), json: await readFile(await download.path(), 'utf8') }
}

async function takeIn(page: Page, json: string): Promise<void> {
  const file = { name: 'a.visit.json', mimeType: 'application/json', buffer: Buffer.from(json) }
  await page.getByLabel('Take in a file').setInputFiles(file)
}

test('[property] the record to sign is written on this device, with no network, as a PDF', async ({
  page,
  context,
}) => {
  await openDemo(page, 'demo-step-by-step')
  await page.evaluate(() => navigator.serviceWorker.ready)
  await context.setOffline(true)
  const [saved] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Record to sign (PDF)' }).click(),
  ])
  expect(saved.suggestedFilename()).toBe('demo-bungalow-west-unit.record.pdf')
  const bytes = await readFile(await saved.path())
  expect(bytes.subarray(0, 5).toString()).toBe('%PDF-')
  await expect(page.getByRole('button', { name: 'Record to sign (PDF)' })).toBeEnabled()
})

test('[limit] a record that cannot be written says what to do instead', async ({ page }) => {
  await openDemo(page, 'demo-step-by-step')
  await page.evaluate(() => {
    URL.createObjectURL = () => {
      throw new DOMException('no space left', 'QuotaExceededError')
    }
  })
  await page.getByRole('button', { name: 'Record to sign (PDF)' }).click()
  await expect(page.getByRole('alert')).toContainText('The record could not be written')
})
