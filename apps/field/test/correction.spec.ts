import { expect, type Page, test } from '@playwright/test'
import { enter, goTo, press, take, type, unfold } from './by-keyboard.ts'
import { field, key, logLines, newVisit, openDemo, word } from './field-app.ts'

// By keyboard alone.

test('[property] a slip is corrected in the log, and the log keeps both', async ({ page }) => {
  await openDemo(page, 'demo-orifice-add')
  await expect(word(page)).toHaveText('add')
  const slip = logLines(page).filter({ hasText: 'Suction line' })
  await unfold(slip)
  await take(key(page, 'misread'))
  await enter(page.getByLabel('Suction line, corrected'), '50 °F')
  await expect(slip).toContainText('63 °F')
  await expect(slip).toContainText('now 50 °F')
  await unfold(slip)
  await expect(page.locator('.log-open')).toContainText('corrected to Suction line: 50 °F; reason: misread')
  await expect(field(page, 'reading-suction-temperature')).toHaveValue('50.0')
  await expect(word(page)).not.toHaveText('add')
})

test('[property] a withdrawn entry leaves the finding, stays in the log and can be brought back', async ({ page }) => {
  await openDemo(page, 'demo-orifice-add')
  const entry = logLines(page).filter({ hasText: 'Suction line' })
  await unfold(entry)
  await press(key(page, 'Withdraw this entry'))
  await expect(entry).toContainText('withdrawn')
  await expect(field(page, 'reading-suction-temperature')).toHaveValue('')
  await expect(word(page)).toHaveText('cannot tell')
  await press(key(page, 'Bring it back'))
  await expect(word(page)).toHaveText('add')
})

test('[property] undo goes back entry by entry, also after a restart, and erases nothing', async ({ page }) => {
  await newVisit(page)
  const undo = key(page, 'Undo the last entry')
  await expect(undo).toBeDisabled()
  await enter(field(page, 'reading-suction-pressure'), '110')
  await enter(field(page, 'reading-suction-pressure'), '118')
  await expect(field(page, 'reading-suction-pressure')).toHaveValue('118.0')
  await press(undo)
  await expect(field(page, 'reading-suction-pressure')).toHaveValue('110.0')
  await expect(page.getByText('Undone: Suction pressure “118 psig”')).toBeVisible()
  await page.reload()
  await press(undo)
  await expect(field(page, 'reading-suction-pressure')).toHaveValue('')
  await expect(undo).toBeDisabled()
  await expect(logLines(page)).toHaveCount(2)
  await press(key(page, 'Bring it back'))
  await expect(field(page, 'reading-suction-pressure')).toHaveValue('110.0')
})

test('[property] twenty-five entries are undone and brought back one by one, with a restart in the middle of each', async ({
  page,
}) => {
  test.slow()
  await newVisit(page)
  const pressure = field(page, 'reading-suction-pressure')
  const undo = key(page, 'Undo the last entry')
  const shown = (n: number) => (n === 0 ? '' : `${100 + n}.0`)
  for (let n = 1; n <= 25; n++) {
    await enter(field(page, 'reading-suction-pressure'), String(100 + n))
    await expect(pressure).toHaveValue(shown(n))
  }
  for (let n = 24; n >= 0; n--) {
    if (n === 12) await page.reload()
    await press(undo)
    await expect(pressure).toHaveValue(shown(n))
  }
  await expect(undo).toBeDisabled()
  for (let n = 1; n <= 25; n++) {
    if (n === 12) await page.reload()
    await press(key(page, 'Bring it back'))
    await expect(pressure).toHaveValue(shown(n))
  }
  await expect(page.getByText('Undone:')).toBeHidden()
  // By the keys of a desk, too.
  await goTo(undo)
  await page.keyboard.press('Control+z')
  await expect(pressure).toHaveValue(shown(24))
  await page.keyboard.press('Control+Shift+z')
  await expect(pressure).toHaveValue(shown(25))
  await expect(logLines(page)).toHaveCount(25)
})

test('[property] an emptied figure of the system is taken back, an emptied reading is not', async ({ page }) => {
  await newVisit(page)
  await enter(field(page, 'system-nominalCapacity'), '3 ton')
  await expect(page.locator('.visit-head-about')).toContainText('3.0 ton')
  await empty(page, 'system-nominalCapacity')
  await expect(page.locator('.visit-head-about')).not.toContainText('3.0 ton')
  await enter(field(page, 'reading-suction-pressure'), '110')
  await empty(page, 'reading-suction-pressure')
  await expect(field(page, 'reading-suction-pressure')).toHaveValue('110.0')
})

test('[property] a mass ten times too big is doubted beside the finding, and corrected in its own unit on the line that says so', async ({
  page,
}) => {
  await openDemo(page, 'demo-orifice-add')
  await press(key(page, 'Enter what the scale showed'))
  await enter(field(page, 'moved-mass'), '15000 g')
  const doubt = page.locator('.finding .trouble')
  await expect(doubt).toContainText(
    'Doubtful, kept all the same. Refrigerant moved, against the whole nameplate charge: 33 lb 1 oz is outside',
  )
  await press(key(page, 'Correct it in the log'))
  const moved = logLines(page).first()
  await expect(moved).toBeFocused()
  const form = page.locator('.log-open')
  await goTo(form.getByLabel('Mass by the scale'))
  // Over what stands there.
  await page.keyboard.type('150')
  await expect(form.locator('.form-says').first()).toHaveText('reads as 150 g')
  await page.keyboard.press('Enter')
  await expect(form).toHaveCount(0)
  await expect(moved).toContainText('now 150 g')
  await expect(moved).toContainText('The correction was taken.')
  await expect(moved).toBeFocused()
  await expect(moved).toBeInViewport({ ratio: 1 })
  await expect(doubt).toHaveCount(0)
  // Opened again, it begins with what stands now.
  await unfold(moved)
  await expect(form.getByLabel('Mass by the scale')).toHaveValue('150 g')
})

/** What stands in a blank is marked when one comes to it. */
async function empty(page: Page, id: string): Promise<void> {
  await goTo(field(page, id))
  await page.keyboard.press('Delete')
  await type(page, '')
}
