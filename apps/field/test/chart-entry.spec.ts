import { readFileSync } from 'node:fs'
import { expect, type Page, test } from '@playwright/test'
import { axeViolations } from './axe-violations.ts'
import { enter, goTo, pick, press, take, unfold } from './by-keyboard.ts'
import { CURVES, chartPhoto, OUTDOOR, SUPERHEAT, shareOf } from './chart-photo.ts'
import { key, openDemo } from './field-app.ts'

async function openChart(page: Page, way: 'Trace a photo' | 'Type it' | 'Paste as text'): Promise<void> {
  await openDemo(page, 'demo-orifice-add')
  await unfold(page.locator('.system summary', { hasText: 'Nameplate' }))
  await press(key(page, 'Enter the chart'))
  await take(key(page, way))
}

/** Types the value and taps where it lies. */
async function tap(page: Page, label: RegExp, value: number, at: { x: number; y: number }): Promise<void> {
  await page.getByLabel(label).fill(String(value))
  await touch(page, at)
}

async function touch(page: Page, at: { x: number; y: number }): Promise<void> {
  const surface = page.locator('.trace-surface > svg').first()
  await surface.scrollIntoViewIfNeeded()
  const box = (await surface.boundingBox())!
  await page.mouse.move(box.x + at.x * box.width, box.y + at.y * box.height)
  await page.mouse.down()
  await expect(page.locator('.trace-loupe')).toBeVisible()
  await page.mouse.up()
}

async function markAxes(page: Page): Promise<void> {
  for (const [label, value, at] of AXES) await tap(page, label, value, at)
}

const AXES = [
  [/A first mark on the axis of the outdoor/, 60, shareOf(60, 0)],
  [/A second mark on the axis of the outdoor/, 110, shareOf(110, 0)],
  [/A first mark on the axis of the superheat/, 0, shareOf(60, 0)],
  [/A second mark on the axis of the superheat/, 40, shareOf(60, 40)],
] as const

type Share = ReturnType<typeof shareOf>
/** Small steps of the mark across the photo and down it, and in a large one. */
const [ACROSS, DOWN, LARGE] = [300, 225, 10]

/** Moves the mark with the arrow keys as near as their steps come, sets it, and tells where. */
async function setMark(page: Page, from: Share, to: Share): Promise<Share> {
  const x = Math.round((to.x - from.x) * ACROSS)
  const y = Math.round((to.y - from.y) * DOWN)
  await goTo(page.getByRole('application'))
  await arrow(page, x < 0 ? 'ArrowLeft' : 'ArrowRight', Math.abs(x))
  await arrow(page, y < 0 ? 'ArrowUp' : 'ArrowDown', Math.abs(y))
  await expect(page.locator('.trace-loupe')).toBeVisible()
  await page.keyboard.press('Enter')
  return { x: from.x + x / ACROSS, y: from.y + y / DOWN }
}

async function arrow(page: Page, key: string, steps: number): Promise<void> {
  for (let n = 0; n < Math.floor(steps / LARGE); n++) await page.keyboard.press(`Shift+${key}`)
  for (let n = 0; n < steps % LARGE; n++) await page.keyboard.press(key)
}

test('[property] by keyboard alone a chart is traced on a turned photo within 2 % of its axis, and sets the target', async ({
  page,
}) => {
  test.setTimeout(120_000)
  await openChart(page, 'Trace a photo')
  const buffer = await chartPhoto(page)
  await pick(page.getByLabel('Take or pick a photo'), { name: 'panel.png', mimeType: 'image/png', buffer })
  let mark: Share = { x: 0.5, y: 0.5 }
  for (const [label, value, at] of AXES) {
    await enter(page.getByLabel(label), String(value))
    mark = await setMark(page, mark, at)
  }
  for (const [value, curve] of Object.entries(CURVES)) {
    await enter(page.getByLabel(/A curve: its indoor wet bulb/), value)
    for (let outdoor = 60; outdoor <= 110; outdoor += 10) {
      mark = await setMark(page, mark, shareOf(outdoor, curve(outdoor)))
    }
  }
  await expect(page.locator('.trace-result')).toContainText('The grid passes every tap within 0.')
  await press(key(page, 'Keep the chart'))
  await expect(page.getByRole('status').filter({ hasText: 'The chart is kept.' })).toBeVisible()
  const chart = await keptChart(page)
  expect(chart.indoorTemperatures).toEqual([60, 66, 72])
  const errors = chart.outdoorTemperatures.flatMap((outdoor, i) =>
    chart.indoorTemperatures.flatMap((wetBulb, j) => {
      const read = chart.superheat[i]![j]
      return typeof read === 'number' ? [Math.abs(read - CURVES[wetBulb]!(outdoor))] : []
    }),
  )
  expect(errors.length).toBeGreaterThanOrEqual(30)
  expect(Math.max(...errors) / (SUPERHEAT[1] - SUPERHEAT[0])).toBeLessThan(0.02)
  expect(Math.abs(chart.outdoorTemperatures[0]! - OUTDOOR[0]) / (OUTDOOR[1] - OUTDOOR[0])).toBeLessThan(0.02)
  // 67 °F indoors and 95 °F outdoors, between the curves of 66 and 72.
  const target = CURVES[66]!(95) + (CURVES[72]!(95) - CURVES[66]!(95)) / 6
  const apart = async () => {
    const shown = await page.locator('.band-target-label').textContent()
    return Math.abs(Number(/target ([\d.]+)/.exec(shown ?? '')?.[1]) - target)
  }
  // The engine answers a little later than the chart is kept.
  await expect.poll(apart).toBeLessThan(0.8)
})

test('[property] with a finger on a phone every tap can be undone, and a trace survives a reload', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 })
  await openChart(page, 'Trace a photo')
  const photo = { name: 'panel.png', mimeType: 'image/png', buffer: await chartPhoto(page) }
  await page.locator('.chart-entry input[type=file]').setInputFiles(photo)
  await touch(page, shareOf(60, 0))
  await expect(page.getByRole('alert')).toHaveText(/Type its value first/)
  await markAxes(page)
  await tap(page, /A curve/, 66, shareOf(70, 20))
  await expect(page.locator('.trace-surface circle')).toHaveCount(1)
  await page.reload()
  await page.locator('.system summary', { hasText: 'Nameplate' }).click()
  await page.getByRole('button', { name: 'Enter the chart' }).click()
  await page.getByRole('button', { name: 'Trace a photo' }).click()
  await expect(page.locator('.trace-surface circle')).toHaveCount(1)
  await expect(page.getByLabel(/A curve/)).toHaveValue('66')
  const undo = page.getByRole('button', { name: 'Undo the last tap' })
  for (let taps = 5; taps > 0; taps--) await undo.click()
  await expect(undo).toBeDisabled()
  await expect(page.getByLabel(/A first mark on the axis of the outdoor/)).toHaveValue('60')
  await page.getByRole('button', { name: 'Keep the chart' }).click()
  await expect(page.getByRole('alert')).toContainText('axes of the chart: missing')
})

test('[property] a grid is typed with arrow keys, pasted as a block, kept, and survives a reload half done', async ({
  page,
}) => {
  await openChart(page, 'Type it')
  await page.getByLabel('Indoor temperature 1').focus()
  await page.keyboard.type('60')
  await page.keyboard.press('ArrowRight')
  await page.keyboard.type('70')
  await page.keyboard.press('Enter')
  await page.keyboard.type('20')
  await page.reload()
  await page.locator('.system summary', { hasText: 'Nameplate' }).click()
  await page.getByRole('button', { name: 'Enter the chart' }).click()
  await expect(page.getByLabel('Indoor temperature 2')).toHaveValue('70')
  await page.getByRole('button', { name: 'Keep the chart' }).click()
  await expect(page.getByRole('alert')).toContainText('row 2, column 1: missing')
  await page.getByLabel('Outdoor temperature 1').focus()
  await page.evaluate(() => {
    const data = new DataTransfer()
    data.setData('text', '90\t20\t30\n100\t20\t30')
    document.activeElement?.dispatchEvent(
      new ClipboardEvent('paste', { clipboardData: data, bubbles: true, cancelable: true }),
    )
  })
  await page.getByRole('button', { name: 'Keep the chart' }).click()
  await expect(page.locator('.band-target-label')).toContainText('27.0 °F')
  expect(await keptChart(page)).toMatchObject({
    outdoorTemperatures: [90, 100],
    superheat: [
      [20, 30],
      [20, 30],
    ],
  })
})

test('[property] each way to enter a chart: nothing against axe in both themes, nothing sticks out at 320 px', async ({
  page,
}) => {
  test.setTimeout(120_000)
  await openChart(page, 'Trace a photo')
  const photo = { name: 'panel.png', mimeType: 'image/png', buffer: await chartPhoto(page) }
  await page.locator('.chart-entry input[type=file]').setInputFiles(photo)
  await markAxes(page)
  await tap(page, /A curve/, 66, shareOf(70, 20))
  await tap(page, /A curve/, 66, shareOf(90, 10))
  for (const way of ['Trace a photo', 'Type it', 'Paste as text']) {
    await page.getByRole('button', { name: way }).click()
    expect(await axeViolations(page, '.system')).toEqual([])
    await page.setViewportSize({ width: 320, height: 640 })
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320)
    await page.setViewportSize({ width: 1280, height: 800 })
  }
})

interface GridChart {
  readonly outdoorTemperatures: readonly number[]
  readonly indoorTemperatures: readonly number[]
  readonly superheat: readonly (readonly (number | null)[])[]
}

/** The chart as the exported visit holds it. */
async function keptChart(page: Page): Promise<GridChart> {
  const saving = page.waitForEvent('download')
  await page.getByRole('button', { name: 'Export' }).click()
  const { events } = JSON.parse(readFileSync(await (await saving).path(), 'utf8'))
  return events.findLast((event: { facts?: { makersChart?: unknown } }) => event.facts?.makersChart).facts.makersChart
}
