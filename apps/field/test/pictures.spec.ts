import { expect, test } from '@playwright/test'
import { newVisit, openDemo } from './field-app.ts'

test('[property] the pictures of a visit follow the readings, each with its figures as a table', async ({ page }) => {
  await openDemo(page, 'demo-step-by-step')
  const pictures = page.locator('.picture')
  await expect(pictures.getByRole('heading')).toHaveText([
    'Superheat against its target',
    'Weighed steps',
    'Closing on the charge',
    'Pressure and enthalpy of R-410A, with this cycle',
  ])
  await expect(pictures.first().getByRole('img', { name: 'Superheat against its target' })).toBeVisible()
  await pictures.first().locator('summary').click()
  await expect(pictures.first().getByRole('columnheader').first()).toHaveText('air entering condenser, °F')
  await page.getByRole('button', { name: /^Units/ }).click()
  await expect(pictures.first().getByRole('columnheader').first()).toHaveText('air entering condenser, °C')
})

test('[property] a picture has the strokes and colours of its package, in both themes', async ({ page }) => {
  await page.addInitScript(() => localStorage.setItem('chargewright.theme', 'dim'))
  await openDemo(page, 'demo-orifice-hold')
  const paths = page.locator('.picture').first().locator('svg path')
  await expect(paths.first()).toBeAttached()
  const widths = await paths.evaluateAll((all) => all.map((path) => getComputedStyle(path).strokeWidth))
  expect(new Set(widths).size).toBeGreaterThan(1)
  await expect(page.locator('.picture svg text').first()).toHaveCSS('fill', 'rgb(196, 193, 183)')
})

test('[limit] where nothing can be drawn there is no heading for it', async ({ page }) => {
  await newVisit(page)
  await page.waitForLoadState('networkidle')
  await expect(page.locator('.pictures')).toHaveCount(0)
})
