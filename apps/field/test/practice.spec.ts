import { expect, type Page, test } from '@playwright/test'
import { axeViolations } from './axe-violations.ts'
import * as keyboard from './by-keyboard.ts'
import { field, key, logLines, openStart, sentence, word } from './field-app.ts'

async function startCase(page: Page, seed: string, device = 'fixed orifice'): Promise<void> {
  await openStart(page)
  await keyboard.press(page.getByRole('link', { name: 'Practice bench' }))
  await keyboard.take(key(page, device))
  await enterCase(page, seed)
  await expect(page.getByRole('heading', { name: 'The bench' })).toBeVisible()
}

async function enterCase(page: Page, seed: string): Promise<void> {
  await keyboard.goTo(page.getByLabel('Number of the case'))
  await page.keyboard.type(seed)
  await press(page, 'Start a case')
}

const press = (page: Page, name: string) => keyboard.press(key(page, name))
const unfold = (page: Page, title: string) => keyboard.unfold(page.locator('.bench summary', { hasText: title }))
const clock = (page: Page) => page.locator('.bench-clock strong')

test('[property] by keyboard alone a case is read, weighed, waited for and read again, to its debrief, with a restart on the way', async ({
  page,
}) => {
  test.setTimeout(120_000)
  await startCase(page, '4711')
  await expect(page.locator('.practice-mark')).toContainText('Practice, no real system')
  await expect(page.locator('.practice-mark')).toContainText('case 4711')
  await expect(clock(page)).toHaveText('0:00')
  await press(page, 'Wait 15 min')
  await expect(clock(page)).toHaveText('0:15')
  await expect(page.getByRole('button', { name: 'Wait 15 min' })).toBeFocused()
  await press(page, 'Enter what the instruments show')
  await expect(field(page, 'reading-suction-pressure')).toHaveValue(/\d/)
  await expect(sentence(page)).toBeInViewport()
  await expect(word(page)).not.toHaveText('not ready')

  await page.reload()
  await expect(clock(page)).toHaveText('0:15')
  await unfold(page, 'Weigh refrigerant in or out')
  await keyboard.enter(field(page, 'moved-mass'), 'pasta')
  await expect(page.getByRole('alert')).toContainText('cannot read “pasta”')
  await press(page, 'Recover')
  await keyboard.enter(field(page, 'moved-mass'), '900 oz')
  await expect(page.getByRole('alert')).toContainText('mass to take out')
  await keyboard.enter(field(page, 'moved-mass'), '3')
  await expect(logLines(page).first()).toContainText('Out of the system')
  await expect(word(page)).toHaveText('not ready')
  await unfold(page, 'Mend, clean, adjust')
  await press(page, 'Clean the condenser')
  await expect(logLines(page).first()).toContainText('cleaned the condenser')
  await press(page, 'Wait 15 min')
  await press(page, 'Enter what the instruments show')
  await expect(word(page)).not.toHaveText('not ready')

  await press(page, 'End, and see what it was')
  await expect(page.getByRole('heading', { name: 'What it was' })).toBeInViewport()
  await expect(page.locator('.bench')).toContainText(/The system had .*; it held .* where 7.lb.0.* is right\./)
  await expect(page.locator('.bench tbody tr')).toHaveCount(2)
  await expect(page.locator('.bench tbody tr').first()).toContainText('recovered 3')
  await page.reload()
  await expect(page.getByRole('heading', { name: 'What it was' })).toBeVisible()
})

test('[property] a step that is asked for leads to the scale of the bench', async ({ page }) => {
  await startCase(page, '9992')
  await press(page, 'Wait 15 min')
  await press(page, 'Enter what the instruments show')
  await expect(word(page)).toHaveText('recover')
  await press(page, 'Enter what the scale showed')
  await expect(field(page, 'moved-mass')).toBeFocused()
  await expect(page.getByRole('button', { name: 'Recover', exact: true })).toHaveAttribute('aria-pressed', 'true')
})

test('[property] the same number is the same case for a class; another device is another', async ({
  page,
  browser,
}) => {
  const instruments = async (where: Page) => {
    await press(where, 'Wait 15 min')
    await expect(clock(where)).toHaveText('0:15')
    return where.locator('.bench-instruments').textContent()
  }
  await startCase(page, '77', 'thermostatic valve')
  const own = await instruments(page)
  const other = await browser.newPage()
  await startCase(other, '77', 'thermostatic valve')
  expect(await instruments(other)).toBe(own)
  await startCase(other, '77')
  expect(await instruments(other)).not.toBe(own)
  await other.close()
})

test('[property] runs stand apart from visits, and are gone when they are taken away', async ({ page }) => {
  await startCase(page, '5')
  await page.goto('/')
  await expect(page.getByText('No system of your own yet.')).toBeVisible()
  await expect(page.getByText('Practice 5')).toHaveCount(0)
  await keyboard.press(page.getByRole('link', { name: 'Practice bench' }))
  await expect(page.getByRole('link', { name: /Case 5/ })).toBeVisible()
  await press(page, 'Take case 5 away')
  await expect(page.getByRole('link', { name: /Case 5/ })).toHaveCount(0)
  await page.reload()
  await expect(page.getByRole('heading', { name: 'Practice bench' })).toBeVisible()
  await expect(page.getByRole('link', { name: /Case 5/ })).toHaveCount(0)
})

test('[limit] a number that is none is refused; a run that is not here says so', async ({ page }) => {
  await page.goto('/#/practice')
  for (const typed of ['0', 'seven', '99999999999']) {
    await enterCase(page, typed)
    await expect(page.getByRole('alert')).toContainText('a whole number from 1 to')
  }
  await page.goto('/#/practice/none')
  await expect(page.getByRole('heading', { name: 'This run is not on this device' })).toBeVisible()
})

test('[property] the bench, all unfolded: nothing against axe in both themes, nothing sticks out at 320 px, all keys large', async ({
  page,
}) => {
  test.setTimeout(120_000)
  await startCase(page, '4711', 'thermostatic valve')
  await unfold(page, 'Weigh refrigerant in or out')
  await unfold(page, 'Mend, clean, adjust')
  await unfold(page, 'Recover all, evacuate, weigh in')
  await press(page, 'Clean the condenser')
  await expect(logLines(page).first()).toContainText('cleaned the condenser')
  for (const ended of [false, true]) {
    if (ended) await press(page, 'End, and see what it was')
    expect(await axeViolations(page, '.practice')).toEqual([])
    await page.setViewportSize({ width: 320, height: 640 })
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320)
    await page.setViewportSize({ width: 1280, height: 800 })
    const heights = await page
      .locator('.bench .key, .bench .act')
      .evaluateAll((keys) => keys.map((key) => key.clientHeight))
    expect(Math.min(...heights)).toBeGreaterThanOrEqual(44)
  }
})
