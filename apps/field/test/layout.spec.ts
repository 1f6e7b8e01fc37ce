import { expect, type Page, test } from '@playwright/test'
import { enter, field, newVisit, openDemo, openStart } from './field-app.ts'

const SCREENS: Readonly<Record<string, (page: Page) => Promise<void>>> = {
  start: openStart,
  'a new visit': newVisit,
  'a visit with a dose': (page) => openDemo(page, 'demo-orifice-add'),
  'a visit of a receiver system': (page) => openDemo(page, 'demo-receiver-low-load'),
}

for (const [screen, open] of Object.entries(SCREENS)) {
  test(`[limit] ${screen} reflows at 320 px with nothing to scroll sideways, unfolded too`, async ({ page }) => {
    await page.setViewportSize({ width: 320, height: 640 })
    await open(page)
    for (let i = 0; i < 2; i++) {
      await page.evaluate(() => {
        for (const fold of document.querySelectorAll('details')) fold.open = true
      })
    }
    expect(await page.evaluate(sticksOut)).toEqual([])
    // Twice the letter size on a phone is the same test as half the width.
    await page.setViewportSize({ width: 390, height: 844 })
    await page.evaluate(() => {
      document.documentElement.style.fontSize = '200%'
    })
    expect(await page.evaluate(sticksOut)).toEqual([])
  })
}

test('[property] the bar stays in sight while one types, and shows the finding as it changes', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 })
  await openDemo(page, 'demo-orifice-add')
  await enter(page, 'reading-suction-temperature', '50')
  await expect(field(page, 'reading-suction-temperature')).toHaveValue('50.0')
  const finding = page.getByRole('button', { name: /^Finding: / })
  await expect(finding).toBeInViewport()
  await expect(finding).not.toHaveText('add')
  await finding.click()
  await expect(page.locator('#finding')).toBeInViewport()
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

test('[property] on paper it is ink on white, without keys, and the reasons are unfolded', async ({ page }) => {
  await page.addInitScript(() => localStorage.setItem('chargewright.theme', 'dim'))
  await openDemo(page, 'demo-orifice-add')
  await page.emulateMedia({ media: 'print' })
  await expect(page.locator('html')).toHaveCSS('background-color', 'rgb(255, 255, 255)')
  await expect(page.locator('.acts')).toBeHidden()
  await expect(page.locator('.finding .evidence .evidence').first()).toBeVisible()
})

test('[property] a visit opens at its top, however far down the list one was', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 })
  await openStart(page)
  await page.getByRole('link', { name: /Demo bakery office/ }).click()
  await page.locator('.visit-row').click()
  await expect(page.locator('#finding')).toBeInViewport()
  await expect.poll(() => page.evaluate(() => scrollY)).toBe(0)
})

test('[property] of a long list of steps the one at hand stands large on the first screen, and the mark survives a restart', async ({
  page,
}) => {
  await page.setViewportSize({ width: 390, height: 844 })
  await openDemo(page, 'demo-capillary-weigh-in')
  const step = page.locator('.guide-step')
  const first = (await step.textContent()) ?? ''
  await expect(step).toBeInViewport({ ratio: 1 })
  await expect(page.locator('.guide-count')).toHaveText(/^Step 1 of 1\d$/)
  const rest = page.locator('.more-steps', { hasText: 'Then steps 2 to' })
  await expect(rest.getByRole('listitem').first()).toBeHidden()
  await rest.locator('summary').click()
  await expect(rest.getByRole('listitem').first()).toHaveText(/^2\./)
  await page.getByRole('button', { name: 'Done, next step' }).click()
  await expect(step).not.toHaveText(first)
  await page.reload()
  await expect(page.locator('.guide-count')).toHaveText(/^Step 2 of/)
  await page.locator('summary', { hasText: 'Step 1 done' }).click()
  await page.getByRole('button', { name: 'Back one step' }).click()
  await expect(step).toHaveText(first)
})

test('[property] a field that a link leads to stands in the middle, clear of the bar, whatever folds away above it', async ({
  page,
}) => {
  await page.setViewportSize({ width: 390, height: 600 })
  await newVisit(page)
  await enter(page, 'system-name', 'Elm Street 12, the upstairs unit over the garage')
  await enter(page, 'system-refrigerant', 'R-410A')
  await page.getByRole('button', { name: 'fixed orifice' }).click()
  await page.getByRole('button', { name: 'comfort cooling' }).click()
  await field(page, 'reading-suction-pressure').click()
  await expect(page.getByRole('group', { name: 'Keys' })).toBeVisible()
  await page.locator('.finding').getByRole('button', { name: 'Air entering condenser' }).click()
  await expect(field(page, 'reading-condenser-entering-air')).toBeFocused()
  await expect(page.getByRole('group', { name: 'Keys' })).toHaveCount(1)
  const label = page.locator('.entry-label[for="reading-condenser-entering-air"]')
  await expect.poll(() => label.evaluate((element) => element.getBoundingClientRect().top)).toBeGreaterThan(200)
})

/** What reaches beyond the right edge of the window. */
function sticksOut(): readonly string[] {
  const width = document.documentElement.clientWidth
  if (document.documentElement.scrollWidth <= width) return []
  return [...document.querySelectorAll<HTMLElement>('body *')]
    .filter((element) => element.checkVisibility() && element.getBoundingClientRect().right > width + 0.5)
    .map((element) => element.outerHTML.slice(0, 80))
}
