import { expect, test } from '@playwright/test'
import { enter, field, logLines, newVisit, openDemo, word } from './field-app.ts'

test('[property] the step that is asked for fills in the form, all but what the scale shows', async ({ page }) => {
  await openDemo(page, 'demo-orifice-add')
  await page.getByRole('button', { name: 'Enter what the scale showed' }).click()
  await expect(field(page, 'moved-mass')).toBeFocused()
  await page.keyboard.type('5.25')
  await page.getByRole('button', { name: 'Enter in the log' }).click()
  const moved = logLines(page).first()
  await expect(moved).toContainText('Into the system')
  await expect(moved).toContainText('5.25 oz, as vapour, suction port, compressor running')
  // Readings from before the step no longer count.
  await expect(word(page)).toHaveText('not ready')
})

test('[property] the key for what the scale shows stands with the steps, and no wait can be begun in its place', async ({
  page,
}) => {
  await page.setViewportSize({ width: 390, height: 844 })
  await openDemo(page, 'demo-orifice-add')
  const scale = page.getByRole('button', { name: 'Enter what the scale showed' })
  await expect(scale).toBeInViewport({ ratio: 1 })
  await page.getByRole('button', { name: 'Done, next step' }).click()
  await expect(page.locator('.guide-step')).toContainText('Let it run 15 min')
  await expect(scale).toBeInViewport({ ratio: 1 })
  await expect(page.getByRole('button', { name: /^Begin the wait/ })).toHaveCount(0)
  await expect(page.getByRole('button', { name: 'Enter the nameplate charge' })).toHaveCount(0)
})

test('[property] who works by keyboard keeps the place when the key of a step goes away', async ({ page }) => {
  await openDemo(page, 'demo-orifice-add')
  await page.getByRole('button', { name: 'Done, next step' }).press('Enter')
  await expect(page.locator('.guide-now')).toBeFocused()
  const record = page.getByRole('button', { name: 'Record to sign (PDF)' })
  const saved = page.waitForEvent('download')
  await record.press('Enter')
  await saved
  await expect(record).toBeFocused()
})

test('[property] a charge that is right leads to the record to be signed', async ({ page }) => {
  await openDemo(page, 'demo-valve-subcooling-hold')
  await page.getByRole('button', { name: 'Go to the record' }).click()
  await expect(field(page, 'record')).toBeFocused()
  await expect(page.getByRole('button', { name: 'Record to sign (PDF)' })).toBeInViewport()
})

test('[property] a lost charge that burns says so in the answer, and leads to the tests before it is weighed in', async ({
  page,
}) => {
  await newVisit(page)
  await enter(page, 'system-refrigerant', 'R-290')
  await page.getByRole('button', { name: 'capillary tube' }).click()
  await page.getByRole('button', { name: 'low-temperature refrigeration' }).click()
  await page.getByRole('button', { name: 'lost its charge suddenly' }).click()
  await expect(word(page)).toHaveText('not the charge')
  await expect(page.locator('.answer .cautions')).toContainText('R-290 burns')
  await page.getByRole('button', { name: 'Go to pressure test, evacuation and weigh-in' }).click()
  await expect(field(page, 'before-charging')).toBeFocused()
})

test('[property] a small step for want of the nameplate charge leads to where it is entered', async ({ page }) => {
  await openDemo(page, 'demo-orifice-add')
  await page.locator('.system summary', { hasText: 'Nameplate' }).click()
  await field(page, 'system-nameplateCharge').fill('')
  await field(page, 'system-nameplateCharge').press('Enter')
  await page.getByRole('button', { name: 'Enter the nameplate charge' }).click()
  await expect(field(page, 'system-nameplateCharge')).toBeFocused()
})

test('[property] a step that a twin sized says under it how far the way is, in the words of its reason', async ({
  page,
}) => {
  await openDemo(page, 'demo-orifice-add')
  const range = page.locator('.dose-range')
  await expect(range).toBeVisible()
  const words = (await range.textContent()) ?? ''
  await expect(page.locator('.evidence-list .evidence', { hasText: words }).first()).toBeAttached()
})

test('[limit] a move without its parts is not kept, and the form says which is missing', async ({ page }) => {
  await newVisit(page)
  await page.locator('summary', { hasText: 'Refrigerant moved' }).click()
  const form = page.locator('.acts .form').first()
  const keep = form.getByRole('button', { name: 'Enter in the log' })
  await page.setViewportSize({ width: 390, height: 600 })
  await field(page, 'moved-mass').fill('6 oz')
  await field(page, 'moved-mass').press('Enter')
  await expect(form.getByRole('alert')).toBeInViewport({ ratio: 1 })
  await expect(form.getByRole('alert')).toHaveText('Direction: missing; expected Into the system, Out of the system')
  for (const answer of ['Out of the system', 'as liquid', 'liquid-line port', 'compressor stopped']) {
    await form.getByRole('button', { name: answer }).click()
  }
  await field(page, 'moved-mass').fill('heavy')
  await keep.click()
  await expect(form.getByRole('alert')).toContainText('Mass by the scale: cannot read “heavy”')
  await expect(field(page, 'moved-mass')).toHaveValue('heavy')
  await field(page, 'moved-mass').fill('180')
  await form.getByLabel('Cylinder').fill('C4')
  await keep.click()
  await expect(logLines(page).first()).toContainText(
    '180 oz, as liquid, liquid-line port, compressor stopped, cylinder C4',
  )
})

test('[property] waits, adjustments and notes go into the log in words', async ({ page }) => {
  await newVisit(page)
  for (const [title, label, text] of [
    ['Waited', 'How long', '15 min'],
    ['Adjusted', 'What was adjusted', 'valve a quarter turn in'],
    ['Note', 'Note', 'oil at the flare of the liquid line'],
  ] as const) {
    await page.locator('.acts summary', { hasText: title }).click()
    const form = page.locator('.acts .group').filter({ has: page.getByRole('heading', { name: title }) })
    await form.getByLabel(label, { exact: true }).fill(text)
    await form.getByRole('button', { name: 'Enter in the log' }).click()
    await expect(logLines(page).first()).toContainText(text)
  }
  await expect(logLines(page)).toHaveCount(3)
})

test('[property] a pasted maker’s chart sets the target, before any rule of thumb', async ({ page }) => {
  await openDemo(page, 'demo-orifice-add')
  await expect(page.locator('.band-target-label')).toContainText('12.4 °F')
  await page.locator('.system summary', { hasText: 'Nameplate' }).click()
  await page.getByRole('button', { name: 'Enter the chart' }).click()
  await page.getByRole('button', { name: 'Paste as text' }).click()
  await page.getByLabel('Maker’s charging chart, as text').fill(',60,70\n90,20,30\n100,20,30')
  await page.getByRole('button', { name: 'Keep the chart' }).click()
  await expect(page.locator('.band-target-label')).toContainText('27.0 °F')
  await expect(word(page)).toHaveText('hold')
  await page.getByLabel('Maker’s charging chart, as text').fill('no chart at all')
  await page.getByRole('button', { name: 'Keep the chart' }).click()
  await expect(page.locator('.finding')).toContainText(/chart.* cannot be read/)
})
