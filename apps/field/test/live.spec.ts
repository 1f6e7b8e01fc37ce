import { readFileSync } from 'node:fs'
import { expect, type Page, test } from '@playwright/test'
import { axeViolations } from './axe-violations.ts'
import * as keyboard from './by-keyboard.ts'
import { field, key, logLines, newVisit } from './field-app.ts'
import { inventedLog } from './live-log.ts'

const LOG = { name: 'roof 4.csv', mimeType: 'text/csv', buffer: Buffer.from(inventedLog()) }

async function openLive(page: Page): Promise<void> {
  await newVisit(page)
  await keyboard.unfold(page.locator('.live-place > details > summary'))
  await expect(page.getByText('Logger file')).toBeVisible()
}

const pick = (page: Page) => keyboard.pick(page.getByLabel('Logger file'), LOG)

test('[property] by keyboard alone a logger file: columns guessed, shown, held still, taken in walking order with their instrument', async ({
  page,
}) => {
  await openLive(page)
  await pick(page)
  await expect(page.getByLabel('Suction pressure psig last')).toHaveValue('suction-pressure')
  await expect(page.getByLabel('Unit of Liquid line °F')).toHaveValue('°F')
  await expect(page.getByLabel('Counter last')).toHaveValue('')
  await expect(page.locator('.trend')).toHaveCount(2)
  await expect(page.locator('.trend canvas').first()).toBeVisible()
  await expect(page.locator('.steadiness-verdict')).toContainText('All 6 readings have held still for 5 min')
  await keyboard.press(key(page, 'Take these values'))
  await expect(page.getByText('6 readings were entered.')).toBeInViewport()
  await expect(field(page, 'reading-suction-pressure')).toHaveValue('112.0')
  await expect(field(page, 'reading-condenser-entering-air')).toHaveValue('95.0')
  await expect(logLines(page)).toHaveCount(6)
  await expect(logLines(page).first()).toContainText('Liquid line')
  await expect(logLines(page).last()).toContainText('Return air, dry bulb')
  const saving = page.waitForEvent('download')
  await keyboard.press(key(page, 'Export'))
  const file = JSON.parse(readFileSync(await (await saving).path(), 'utf8'))
  const instruments = file.events.map((event: { instrument?: { name: string } }) => event.instrument?.name)
  expect(new Set(instruments)).toEqual(new Set(['roof 4.csv']))
})

test('[property] what a column was said to be is remembered for the next file with these headers', async ({ page }) => {
  await openLive(page)
  await pick(page)
  await page.getByLabel('Counter last').selectOption({ label: 'Compressor current' })
  await expect(page.getByLabel('Unit of Counter')).toHaveValue('A')
  await page.getByLabel('Return air °F last').selectOption({ label: 'Box temperature' })
  // One reading has one column.
  await page.getByLabel('Liquid line °F last').selectOption({ label: 'Suction line' })
  await expect(page.getByLabel('Suction line °F last')).toHaveValue('')
  await expect(page.locator('.steadiness-verdict')).toContainText('Compressor current still moves')
  await page.reload()
  await keyboard.unfold(page.locator('.live-place > details > summary'))
  await pick(page)
  await expect(page.getByLabel('Counter last')).toHaveValue('compressor-current')
  await expect(page.getByLabel('Return air °F last')).toHaveValue('box-temperature')
  await expect(page.getByLabel('Suction line °F last')).toHaveValue('')
})

test('[property] the clipboard goes the same way, by key or by hand', async ({ page, context }) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write'])
  await openLive(page)
  await page.evaluate(() => navigator.clipboard.writeText('time\tSuction line °C\n0\t12,5\n1\t12,6'))
  await keyboard.press(key(page, 'Paste'))
  await expect(page.getByRole('heading', { name: 'Pasted: what each column is' })).toBeVisible()
  await expect(page.locator('.steadiness-verdict')).toContainText('Watched for less than 5 min so far')
  await context.clearPermissions()
  await page.evaluate(() => {
    Object.defineProperty(navigator, 'clipboard', { value: undefined })
  })
  await keyboard.press(key(page, 'Paste'))
  await page.getByLabel('Paste the table here').fill('no table')
  await expect(page.getByRole('alert')).toContainText('cannot read “no table”')
  await expect(page.getByRole('heading', { name: 'Pasted: what each column is' })).toBeVisible()
})

test('[property] with a log open: nothing against axe in both themes, nothing sticks out at 320 px', async ({
  page,
}) => {
  await openLive(page)
  await pick(page)
  await expect(page.locator('.trend')).toHaveCount(2)
  expect(await axeViolations(page)).toEqual([])
  await page.setViewportSize({ width: 320, height: 640 })
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320)
})
