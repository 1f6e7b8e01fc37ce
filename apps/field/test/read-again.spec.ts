import { expect, type Page, test } from '@playwright/test'
import { enter, field, logLines, openDemo, word } from './field-app.ts'

const SUCTION = 'reading-suction-pressure'

test('[property] after a step the page goes back to the finding, which counts the wait down by the log', async ({
  page,
}) => {
  await page.clock.install({ time: new Date('2026-07-01T13:59:20') })
  await openDemo(page, 'demo-orifice-add')
  await weighIn(page, '5 oz')
  await expect(word(page)).toHaveText('not ready')
  await expect(page.locator('#finding')).toBeFocused()
  await expect(page.getByRole('timer')).toHaveText('15 min to go Read again from 14:15 on')
  await page.clock.fastForward('06:00')
  await expect(page.getByRole('timer')).toContainText('9 min to go')
  // Locked, or even restarted, it loses nothing.
  await page.reload()
  await page.clock.fastForward('09:00')
  await expect(page.getByRole('timer')).toContainText('Read again now')
})

test('[property] what was read before a step says so, and one key enters it again as it stands', async ({ page }) => {
  await openDemo(page, 'demo-orifice-add')
  await field(page, SUCTION).focus()
  const same = page.getByRole('button', { name: 'As before' })
  // What still counts is left as it is: nothing is entered twice.
  const untouched = await logLines(page).count()
  await same.click()
  await expect(field(page, 'reading-suction-temperature')).toBeFocused()
  await expect(logLines(page)).toHaveCount(untouched)
  await weighIn(page, '5 oz')
  await expect(page.locator(`#${SUCTION}-says`)).toContainText('read before the last change')
  const entries = await logLines(page).count()
  await field(page, SUCTION).focus()
  await same.click()
  await expect(logLines(page)).toHaveCount(entries + 1)
  await expect(logLines(page).first()).toContainText('110 psig')
  await expect(page.locator(`#${SUCTION}-says`)).not.toContainText('before the last change')
  await expect(field(page, 'reading-suction-temperature')).toBeFocused()
  // Typed in full, unchanged, it counts as read again as well.
  await enter(page, 'reading-suction-temperature', '63 °F')
  await expect(logLines(page)).toHaveCount(entries + 2)
})

test('[property] from a reading that is taken again the way goes on to the next that has to be', async ({ page }) => {
  await openDemo(page, 'demo-orifice-add')
  await weighIn(page, '5 oz')
  await enter(page, SUCTION, '118 psig')
  await expect(field(page, 'reading-suction-temperature')).toBeFocused()
  await page.keyboard.type('58 °F')
  await page.keyboard.press('Enter')
  // Past the discharge line, which was never read.
  await expect(field(page, 'reading-condenser-entering-air')).toBeFocused()
  // From a field that was never read it goes on as ever.
  await field(page, 'reading-condenser-leaving-air').focus()
  await page.keyboard.press('Enter')
  await expect(field(page, 'reading-standstill-pressure')).toBeFocused()
})

test('[property] an answer from before a step can be given again, one that still counts cannot', async ({ page }) => {
  await openDemo(page, 'demo-orifice-add')
  const observation = page.locator('fieldset.entry', { has: page.locator('#observation-air-filter') })
  await page.locator('summary', { hasText: 'More to look at' }).click()
  const clean = observation.getByRole('button', { name: 'clean' })
  const entries = (await logLines(page).count()) + 1
  await clean.click()
  await expect(logLines(page)).toHaveCount(entries)
  await clean.click()
  await weighIn(page, '5 oz')
  await expect(logLines(page)).toHaveCount(entries + 1)
  await expect(observation).toContainText('answered before the last change')
  await clean.click()
  await expect(logLines(page)).toHaveCount(entries + 2)
  await expect(observation).not.toContainText('answered before the last change')
})

test('[limit] an entry that cannot be read holds the focus, and Enter weighs a step in once', async ({ page }) => {
  await openDemo(page, 'demo-orifice-add')
  await enter(page, SUCTION, 'pasta')
  await expect(field(page, SUCTION)).toBeFocused()
  await page.keyboard.press('Escape')
  const entries = await logLines(page).count()
  await page.getByRole('button', { name: 'Enter what the scale showed' }).click()
  await page.keyboard.type('5')
  await page.locator('.acts').getByRole('button', { name: 'oz', exact: true }).click()
  await field(page, 'moved-mass').evaluate((mass: HTMLInputElement) => {
    mass.form?.requestSubmit()
    mass.form?.requestSubmit()
  })
  await expect(word(page)).toHaveText('not ready')
  await expect(logLines(page)).toHaveCount(entries + 1)
})

async function weighIn(page: Page, mass: string): Promise<void> {
  await page.getByRole('button', { name: 'Enter what the scale showed' }).click()
  await page.keyboard.type(mass)
  await page.keyboard.press('Enter')
  await expect(logLines(page).first()).toContainText('Into the system')
}
