import { expect, type Locator, type Page, test } from '@playwright/test'
import { axeViolations } from './axe-violations.ts'
import { logLines, newVisit, openDemo } from './field-app.ts'

const step = (page: Page, title: string): Locator =>
  page.locator('details.group', { has: page.getByRole('heading', { name: title, exact: true }) })

async function open(page: Page, title: string): Promise<Locator> {
  const place = step(page, title)
  await place.locator('> summary').click()
  await expect(place.locator('.step form').first()).toBeAttached()
  return place
}

async function fill(form: Locator, blanks: Readonly<Record<string, string>>, keep: string): Promise<void> {
  for (const [label, text] of Object.entries(blanks)) await form.getByLabel(label, { exact: true }).fill(text)
  await form.getByRole('button', { name: keep }).click()
}

test('[property] what a test says comes into view on a phone when a reading is entered, and not before', async ({
  page,
}) => {
  await page.setViewportSize({ width: 390, height: 600 })
  await newVisit(page)
  const vacuum = await open(page, 'Evacuation')
  await vacuum.getByRole('button', { name: /^the habit/ }).click()
  await fill(vacuum.locator('form').last(), { 'Vacuum as the valve is shut': '240' }, 'The valve is shut: begin')
  await expect(vacuum.locator('.verdict-word')).toBeInViewport({ ratio: 1 })
  await fill(
    vacuum.locator('form').first(),
    { 'Vacuum gauge': '380', 'How long after the beginning': '10 min' },
    'Enter the reading',
  )
  await expect(vacuum.locator('.verdict-word')).toHaveText('held')
  await expect(vacuum.locator('.verdict-word')).toBeInViewport({ ratio: 1 })
  const next = vacuum.getByLabel('Vacuum gauge', { exact: true })
  await expect(next).toBeInViewport({ ratio: 1 })
  await expect(next).not.toBeFocused()
  // By keyboard the next reading is typed at once.
  await next.fill('390')
  await vacuum.getByLabel('How long after the beginning').fill('11 min')
  await page.keyboard.press('Enter')
  await expect(vacuum.locator('.readings')).toContainText('11')
  await expect(next).toBeFocused()
  await expect(next).toHaveValue('')
  await page.reload()
  await open(page, 'Evacuation')
  await expect(vacuum.locator('.verdict-word')).toHaveText('held')
  await expect(vacuum.locator('.verdict-word')).not.toBeInViewport()
})

test('[property] a burning refrigerant is told of where the system is tested and evacuated', async ({ page }) => {
  await openDemo(page, 'demo-capillary-weigh-in')
  for (const title of ['Pressure test', 'Evacuation']) {
    const place = await open(page, title)
    await expect(place.locator('.cautions').first()).toContainText(/R-290 burns.*no flame/)
  }
})

test('[limit] what is missing or cannot be read is named with what belongs there, and nothing typed is lost', async ({
  page,
}) => {
  await newVisit(page)
  const pressure = await open(page, 'Pressure test')
  const form = pressure.locator('form').last()
  await fill(form, { 'Test pressure': 'full' }, 'Under dry nitrogen: begin')
  await expect(form.getByRole('alert')).toContainText('Test pressure: cannot read “full”')
  await fill(form, { 'Test pressure': '300 psig' }, 'Under dry nitrogen: begin')
  await expect(form.getByRole('alert')).toContainText('Temperature of the gas: missing')
  await expect(form.getByLabel('Test pressure', { exact: true })).toHaveValue('300 psig')
  await expect(logLines(page)).toHaveCount(0)

  const vacuum = await open(page, 'Evacuation')
  await vacuum.getByRole('button', { name: /^the maker’s own/ }).click()
  const begin = vacuum.locator('form').last()
  await fill(begin, { 'Pull down to': '300 micron', 'Not to rise above': '67 Pa' }, 'The valve is shut: begin')
  await expect(begin.getByRole('alert')).toContainText('For: missing; expected for example 30 min')
})

test('[property] a pasted log is judged, corrected by undo, and a leak is told from moisture', async ({ page }) => {
  await newVisit(page)
  const vacuum = await open(page, 'Evacuation')
  await vacuum.locator('summary', { hasText: 'Paste the log' }).click()
  const rise = Array.from({ length: 13 }, (_, i) => `${5 * i} min, ${250 + 40 * i + (i % 3)}`).join('\n')
  await vacuum.getByLabel('Log of the vacuum gauge').fill(rise)
  await vacuum.getByRole('button', { name: 'Enter the log' }).click()
  await expect(vacuum.locator('.verdict-word')).toHaveText('not held')
  await expect(vacuum.locator('.verdict')).toContainText('Check the hoses, the gauge and the valve cores first')
  await page.getByRole('button', { name: 'Undo the last entry' }).click()
  await expect(vacuum.locator('.verdict')).toHaveCount(0)
  await expect(step(page, 'Evacuation').locator('> summary')).toContainText('not begun')
})

test('[property] steps in both themes: no violation of axe, nothing sticks out at 320 px', async ({ page }) => {
  await newVisit(page)
  const pressure = await open(page, 'Pressure test')
  const begin = { 'Test pressure': '300 psig', 'Temperature of the gas': '75 °F' }
  await fill(pressure.locator('form').last(), begin, 'Under dry nitrogen: begin')
  await expect(pressure.locator('.readings')).toBeVisible()
  await expect(pressure.getByRole('timer')).toContainText(/It has stood .*A full test stands 24\sh, until /)
  await open(page, 'Evacuation')
  await open(page, 'Cylinders')
  await open(page, 'Weigh-in')
  await page.locator('.walk summary', { hasText: 'Find the airflow' }).click()
  await page.locator('.walk summary', { hasText: 'Compressor and supply' }).click()
  await expect(page.locator('.walk .step form')).toHaveCount(2)
  expect(await axeViolations(page)).toEqual([])
  await page.setViewportSize({ width: 320, height: 640 })
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320)
})
