import { expect, type Locator, type Page } from '@playwright/test'
import { CURVES, chartPhoto, shareOf } from '../../test/chart-photo.ts'
import { newVisit, openDemo, openStart } from '../../test/field-app.ts'
import { inventedLog } from '../../test/live-log.ts'
import type { Stretch } from './screen.ts'

export const BESIDE: Stretch = {
  title: 'Instruments and charts',
  screens: [
    {
      name: 'live',
      about: 'Readings from a logger: what each column is, whether they hold still, and the trend.',
      open: live,
    },
    { name: 'live-dim', about: 'The same in a dim plant room.', open: live, theme: 'dim' },
    { name: 'chart-grid', about: 'A maker’s chart, typed as a grid.', open: chartGrid },
    { name: 'chart-text', about: 'A maker’s chart, pasted as text.', open: chartText },
    { name: 'chart-photo', about: 'A maker’s chart, traced on its photo.', open: chartTraced },
  ],
}

export const PRACTICE: Stretch = {
  title: 'Practice',
  screens: [
    {
      name: 'practice',
      about: 'The practice bench: which device, which case.',
      open: async (page) => {
        await openStart(page)
        await page.getByRole('link', { name: 'Practice bench' }).click()
        await expect(page.getByRole('button', { name: 'Start a case' })).toBeVisible()
        return undefined
      },
    },
    { name: 'practice-run', about: 'A case on the bench, marked as practice on every edge.', open: run, whole: true },
    { name: 'practice-debrief', about: 'What it was, and what each act did.', open: debrief },
  ],
}

export const DEVICE: Stretch = {
  title: 'This device',
  screens: [
    {
      name: 'device',
      about: 'What this device promises, and the way of everything into one file and back.',
      open: device,
    },
    {
      name: 'settings',
      about: 'The unit of each quantity, and the instruments that one measures with.',
      open: settings,
    },
  ],
}

async function live(page: Page): Promise<Locator> {
  await newVisit(page)
  await page.locator('.live-place summary').click()
  const file = { name: 'roof 4.csv', mimeType: 'text/csv', buffer: Buffer.from(inventedLog()) }
  await page.locator('.live input[type=file]').setInputFiles(file)
  await expect(page.locator('.trend canvas').last()).toBeVisible()
  return page.locator('.live-place')
}

async function openChart(page: Page, way: string): Promise<Locator> {
  await openDemo(page, 'demo-orifice-add')
  await page.locator('.system summary', { hasText: 'Nameplate' }).click()
  await page.getByRole('button', { name: 'Enter the chart' }).click()
  await page.getByRole('button', { name: way }).click()
  return page.locator('.chart-entry')
}

async function chartGrid(page: Page): Promise<Locator> {
  const entry = await openChart(page, 'Type it')
  await page.getByLabel('Indoor temperature 1').focus()
  await page.evaluate(() => {
    const data = new DataTransfer()
    data.setData('text', '60\t65\t70\n')
    const paste = new ClipboardEvent('paste', { clipboardData: data, bubbles: true, cancelable: true })
    document.activeElement?.dispatchEvent(paste)
  })
  await page.getByLabel('Outdoor temperature 1').focus()
  await page.evaluate(() => {
    const data = new DataTransfer()
    data.setData('text', '80\t17\t25\t32\n90\t12\t20\t28\n100\t\t15\t23')
    const paste = new ClipboardEvent('paste', { clipboardData: data, bubbles: true, cancelable: true })
    document.activeElement?.dispatchEvent(paste)
  })
  return entry
}

async function chartText(page: Page): Promise<Locator> {
  const entry = await openChart(page, 'Paste as text')
  await entry.locator('textarea').fill(',60,65,70\n80,17,25,32\n90,12,20,28\n100,,15,23')
  return entry
}

async function chartTraced(page: Page): Promise<Locator> {
  const entry = await openChart(page, 'Trace a photo')
  const photo = { name: 'panel.png', mimeType: 'image/png', buffer: await chartPhoto(page) }
  await page.locator('.chart-entry input[type=file]').setInputFiles(photo)
  const marks = [
    [/A first mark on the axis of the outdoor/, 60, shareOf(60, 0)],
    [/A second mark on the axis of the outdoor/, 110, shareOf(110, 0)],
    [/A first mark on the axis of the superheat/, 0, shareOf(60, 0)],
    [/A second mark on the axis of the superheat/, 40, shareOf(60, 40)],
  ] as const
  for (const [label, value, at] of marks) {
    await page.getByLabel(label).fill(String(value))
    await touch(page, at)
  }
  for (const [value, curve] of Object.entries(CURVES)) {
    await page.getByLabel(/A curve: its indoor wet bulb/).fill(value)
    for (let outdoor = 60; outdoor <= 110; outdoor += 10) await touch(page, shareOf(outdoor, curve(outdoor)))
  }
  await expect(page.locator('.trace-result')).toContainText('The grid passes every tap')
  return entry
}

async function touch(page: Page, at: { readonly x: number; readonly y: number }): Promise<void> {
  const surface = page.locator('.trace-surface > svg').first()
  await surface.scrollIntoViewIfNeeded()
  const box = (await surface.boundingBox())!
  await page.mouse.move(box.x + at.x * box.width, box.y + at.y * box.height)
  await page.mouse.down()
  await page.mouse.up()
}

async function run(page: Page): Promise<undefined> {
  await openStart(page)
  await page.getByRole('link', { name: 'Practice bench' }).click()
  await page.getByRole('button', { name: 'fixed orifice' }).click()
  await page.getByLabel('Number of the case').fill('4711')
  await page.getByRole('button', { name: 'Start a case' }).click()
  await page.getByRole('button', { name: 'Wait 15 min', exact: true }).click()
  await expect(page.locator('.bench-clock strong')).toHaveText('0:15')
  await page.getByRole('button', { name: 'Enter what the instruments show' }).click()
  await expect(page.locator('#reading-suction-pressure')).toHaveValue(/\d/)
  await expect(page.locator('.finding-word')).not.toHaveText('not ready')
  await page.evaluate(() => scrollTo(0, 0))
}

async function debrief(page: Page): Promise<Locator> {
  await run(page)
  await page.locator('.bench summary', { hasText: 'Mend, clean, adjust' }).click()
  await page.getByRole('button', { name: 'Clean the condenser', exact: true }).click()
  await page.getByRole('button', { name: 'Wait 15 min', exact: true }).click()
  await page.getByRole('button', { name: 'End, and see what it was' }).click()
  await expect(page.getByRole('heading', { name: 'What it was' })).toBeVisible()
  // The answer above it is longer once it is known that the readings are from before the act.
  await expect(page.locator('.finding-word')).toHaveText('not ready')
  return page.locator('.bench')
}

async function device(page: Page): Promise<Locator> {
  await openStart(page)
  await expect(page.getByText('Works without a network from now on.')).toBeVisible()
  return page.locator('.promises')
}

async function settings(page: Page): Promise<Locator> {
  await openStart(page)
  for (const fold of ['Unit of each quantity', 'My instruments'])
    await page.locator('summary', { hasText: fold }).click()
  await page.locator('#instrument-low-side-gauge > summary').click()
  return page.locator('.settings').first()
}
