import { expect, test } from '@playwright/test'
import { enter, field, logLines, newVisit, openDemo, word } from './field-app.ts'

test('[property] a slip is corrected in the log, and the log keeps both', async ({ page }) => {
  await openDemo(page, 'demo-orifice-add')
  await expect(word(page)).toHaveText('add')
  const slip = logLines(page).filter({ hasText: 'Suction line' })
  await slip.click()
  await page.getByRole('button', { name: 'misread' }).click()
  await page.getByLabel('Suction line, corrected').fill('50 °F')
  await page.keyboard.press('Enter')
  await expect(slip).toContainText('63 °F')
  await expect(slip).toContainText('now 50 °F')
  await expect(page.locator('.log-open')).toContainText('corrected to Suction line: 50 °F; reason: misread')
  await expect(field(page, 'reading-suction-temperature')).toHaveValue('50.0')
  await expect(word(page)).not.toHaveText('add')
})

test('[property] a withdrawn entry leaves the finding, stays in the log and can be brought back', async ({ page }) => {
  await openDemo(page, 'demo-orifice-add')
  const entry = logLines(page).filter({ hasText: 'Suction line' })
  await entry.click()
  await page.getByRole('button', { name: 'Withdraw this entry' }).click()
  await expect(entry).toContainText('withdrawn')
  await expect(field(page, 'reading-suction-temperature')).toHaveValue('')
  await expect(word(page)).toHaveText('cannot tell')
  await page.getByRole('button', { name: 'Bring it back' }).click()
  await expect(word(page)).toHaveText('add')
})

test('[property] undo goes back entry by entry, also after a restart, and erases nothing', async ({ page }) => {
  await newVisit(page)
  const undo = page.getByRole('button', { name: 'Undo the last entry' })
  await expect(undo).toBeDisabled()
  await enter(page, 'reading-suction-pressure', '110')
  await enter(page, 'reading-suction-pressure', '118')
  await expect(field(page, 'reading-suction-pressure')).toHaveValue('118.0')
  await undo.click()
  await expect(field(page, 'reading-suction-pressure')).toHaveValue('110.0')
  await expect(page.getByText('Undone: Suction pressure “118 psig”')).toBeVisible()
  await page.reload()
  await undo.click()
  await expect(field(page, 'reading-suction-pressure')).toHaveValue('')
  await expect(undo).toBeDisabled()
  await expect(logLines(page)).toHaveCount(2)
  await page.getByRole('button', { name: 'Bring it back' }).click()
  await expect(field(page, 'reading-suction-pressure')).toHaveValue('110.0')
})

test('[property] twenty-five entries are undone and brought back one by one, with a restart in the middle of each', async ({
  page,
}) => {
  test.slow()
  await newVisit(page)
  const pressure = field(page, 'reading-suction-pressure')
  const undo = page.getByRole('button', { name: 'Undo the last entry' })
  const shown = (n: number) => (n === 0 ? '' : `${100 + n}.0`)
  for (let n = 1; n <= 25; n++) {
    await enter(page, 'reading-suction-pressure', String(100 + n))
    await expect(pressure).toHaveValue(shown(n))
  }
  for (let n = 24; n >= 0; n--) {
    if (n === 12) await page.reload()
    await undo.click()
    await expect(pressure).toHaveValue(shown(n))
  }
  await expect(undo).toBeDisabled()
  for (let n = 1; n <= 25; n++) {
    if (n === 12) await page.reload()
    await page.getByRole('button', { name: 'Bring it back' }).click()
    await expect(pressure).toHaveValue(shown(n))
  }
  await expect(page.getByText('Undone:')).toBeHidden()
  // By the keys of a desk, too.
  await page.locator('h1').focus()
  await page.keyboard.press('Control+z')
  await expect(pressure).toHaveValue(shown(24))
  await page.keyboard.press('Control+Shift+z')
  await expect(pressure).toHaveValue(shown(25))
  await expect(logLines(page)).toHaveCount(25)
})

test('[property] an emptied figure of the system is taken back, an emptied reading is not', async ({ page }) => {
  await newVisit(page)
  await enter(page, 'system-nominalCapacity', '3 ton')
  await expect(page.locator('.visit-head-about')).toContainText('3.0 ton')
  await field(page, 'system-nominalCapacity').fill('')
  await page.keyboard.press('Enter')
  await expect(page.locator('.visit-head-about')).not.toContainText('3.0 ton')
  await enter(page, 'reading-suction-pressure', '110')
  await field(page, 'reading-suction-pressure').fill('')
  await page.keyboard.press('Enter')
  await expect(field(page, 'reading-suction-pressure')).toHaveValue('110.0')
})
