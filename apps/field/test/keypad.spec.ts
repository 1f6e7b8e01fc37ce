import { expect, type Page, test } from '@playwright/test'
import { axeViolations } from './axe-violations.ts'
import { enter, field, logLines, newVisit, openDemo } from './field-app.ts'

test.use({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true })

const PRESSURE = 'reading-suction-pressure'

test('[property] a finger gets our keypad and not that of the platform: a vacuum is typed in its own unit', async ({
  page,
}) => {
  await newVisit(page)
  await field(page, PRESSURE).tap()
  await expect(keypad(page)).toBeVisible()
  await expect(field(page, PRESSURE)).toHaveAttribute('inputmode', 'none')
  await press(page, '2', '9', 'Decimal point', '5')
  await expect(says(page, PRESSURE)).toContainText('reads as 29.5 psig')
  for (let i = 0; i < 4; i++) await unitKey(page).tap()
  await expect(field(page, PRESSURE)).toHaveValue('29.5 inHg vac ')
  await expect(says(page, PRESSURE)).toContainText('reads as −14.5 psig')
  await press(page, 'Next')
  await expect(field(page, 'reading-suction-temperature')).toBeFocused()
  await expect(logLines(page)).toContainText(['29.5 inHg vac'])
  await press(page, '1', '2', 'Turn the sign', 'Close the keypad')
  await expect(keypad(page)).toBeHidden()
  await expect(logLines(page).first()).toContainText('-12 °F')
})

test('[property] pounds and ounces are typed one after the other, by the unit key alone', async ({ page }) => {
  await newVisit(page)
  await page.locator('.system summary', { hasText: 'Nameplate' }).tap()
  const charge = field(page, 'system-nameplateCharge')
  await charge.tap()
  await press(page, '1', '4')
  await unitKey(page).tap()
  await press(page, '6')
  await expect(says(page, 'system-nameplateCharge')).toContainText('reads as 14 lb 6 oz')
  await press(page, 'Take back', '7', 'Next')
  await expect(charge).toHaveValue('14 lb 7 oz')
  await expect(logLines(page)).toContainText(['14 lb 7 oz'])
})

test('[property] the value as before comes back by one key, and a slip of a digit is questioned while it is typed', async ({
  page,
}) => {
  await openDemo(page, 'demo-orifice-add')
  const entries = await logLines(page).count()
  await field(page, PRESSURE).tap()
  await press(page, '1', '1', '0', '0', '0')
  await expect(says(page, PRESSURE)).toContainText('reads as 11 000.0 psig'.replace(' 000', '\u202f000'))
  await expect(says(page, PRESSURE)).toContainText('Doubtful')
  await press(page, 'As before')
  await expect(field(page, PRESSURE)).toHaveValue('110.0')
  await expect(logLines(page)).toHaveCount(entries)
})

test('[property] the keyboard of the platform stays one key away, and what was typed stays where it is', async ({
  page,
}) => {
  await newVisit(page)
  await field(page, PRESSURE).tap()
  await press(page, '7', '2', 'Letters, by the keyboard of this device')
  await expect(field(page, PRESSURE)).toHaveAttribute('inputmode', 'text')
  await expect(field(page, PRESSURE)).toBeFocused()
  await expect(field(page, PRESSURE)).toHaveValue('72')
  await expect(logLines(page)).toHaveCount(0)
  // A real keyboard works with either.
  await page.keyboard.press('End')
  await page.keyboard.type(' psia')
  await press(page, 'Keypad')
  await expect(field(page, PRESSURE)).toHaveAttribute('inputmode', 'none')
  await press(page, 'Next')
  await expect(logLines(page)).toContainText(['72 psia'])
})

for (const [width, height] of [
  [390, 844],
  [320, 568],
  [844, 390],
] as const) {
  test(`[limit] at ${width} by ${height} no field and nothing it says is covered, and every key is 64 px`, async ({
    page,
  }) => {
    await page.setViewportSize({ width, height })
    await openDemo(page, 'demo-orifice-add')
    const inputs = page.locator('.stations .entry-value')
    await inputs.first().tap()
    for (let i = 0; i < (await inputs.count()) - 1; i++) {
      await press(page, '7')
      // The page scrolls once what the field says stands below it.
      await expect.poll(() => page.evaluate(coveredPart)).toBeLessThanOrEqual(0.5)
      await press(page, 'Take back', 'Next')
    }
    const sizes = await keypad(page)
      .locator('button')
      .evaluateAll((keys) => keys.map((key) => key.getBoundingClientRect()).map(({ width, height }) => [width, height]))
    expect(sizes).toHaveLength(18)
    expect(Math.min(...sizes.flat())).toBeGreaterThanOrEqual(63.9)
  })
}

test('[limit] with letters twice as large the keypad still fits the width, and the field stays in sight', async ({
  page,
}) => {
  await newVisit(page)
  await page.evaluate(() => {
    document.documentElement.style.fontSize = '200%'
  })
  await field(page, PRESSURE).tap()
  await press(page, '7')
  const { keys, input, width } = await page.evaluate(() => {
    const boxOf = (element: Element) => element.getBoundingClientRect().toJSON()
    const keys = [...document.querySelectorAll('.keypad-key')].map(boxOf)
    return { keys, input: boxOf(document.activeElement!), width: document.documentElement.scrollWidth }
  })
  expect(width).toBe(390)
  expect(Math.max(...keys.map(({ right }) => right))).toBeLessThanOrEqual(390)
  expect(input.bottom).toBeLessThanOrEqual(Math.min(...keys.map(({ top }) => top)))
  expect(input.top).toBeGreaterThan(64)
})

test('[property] with the keypad open, in both themes: no violation of axe, contrast at least 7:1', async ({
  page,
}) => {
  await newVisit(page)
  await field(page, PRESSURE).tap()
  await press(page, '7')
  expect(await axeViolations(page)).toEqual([])
})

test('[property] the mass of a step is typed by the same keys', async ({ page }) => {
  await openDemo(page, 'demo-orifice-add')
  await page.getByRole('button', { name: 'Enter what the scale showed' }).tap()
  await press(page, '5', 'Decimal point', '2')
  await expect(page.locator('#moved-mass-says')).toHaveText('reads as 5.2 oz')
  await press(page, 'Next')
  await expect(keypad(page)).toBeHidden()
  await page.locator('.acts').getByRole('button', { name: 'Enter in the log' }).first().tap()
  await expect(logLines(page).first()).toContainText('5.2 oz')
})

test('[property] “Next” goes through the blanks of a form, and after the last one makes way for its key', async ({
  page,
}) => {
  await newVisit(page)
  await page.locator('.before-charging summary', { hasText: 'Pressure test' }).tap()
  await page.getByLabel('Test pressure').tap()
  await press(page, '1', '5', '0', 'Next')
  await expect(page.getByLabel('Temperature of the gas')).toBeFocused()
  await press(page, '7', '2', 'Next', 'Next')
  await expect(page.getByLabel('Last digit of the thermometer')).toBeFocused()
  await press(page, 'Next')
  await expect(keypad(page)).toBeHidden()
  await expect(page.getByLabel('Temperature of the gas')).toHaveValue('72')
  await expect(page.getByRole('button', { name: 'Under dry nitrogen: begin' })).toBeInViewport()
})

test('[property] the unit key of an empty field turns the unit for what comes, and alone it is no entry', async ({
  page,
}) => {
  await newVisit(page)
  const entries = await logLines(page).count()
  await field(page, PRESSURE).tap()
  await unitKey(page).tap()
  const unit = (await field(page, PRESSURE).inputValue()).trim()
  expect(unit).not.toBe('')
  await expect(unitKey(page)).toContainText(unit)
  await press(page, 'Next')
  await expect(field(page, PRESSURE)).toHaveValue('')
  await expect(logLines(page)).toHaveCount(entries)
  await field(page, PRESSURE).tap()
  await unitKey(page).tap()
  await press(page, '1', '1', '8')
  await expect(field(page, PRESSURE)).toHaveValue(`118 ${unit}`)
  await press(page, 'Next')
  await expect(logLines(page)).toContainText([`118 ${unit}`])
})

test('[property] a quantity with one unit only has nothing to turn to', async ({ page }) => {
  await newVisit(page)
  await field(page, 'reading-compressor-current').tap()
  await expect(unitKey(page)).toHaveText('A')
  await expect(unitKey(page)).toHaveAccessibleName('Unit A')
})

test('[property] pounds and ounces are seen whole, while they are typed and after', async ({ page }) => {
  await newVisit(page)
  await page.locator('.system summary', { hasText: 'Nameplate' }).tap()
  const charge = field(page, 'system-nameplateCharge')
  const hidden = () => charge.evaluate((blank) => blank.scrollWidth - blank.clientWidth)
  await charge.tap()
  await press(page, '6')
  await unitKey(page).tap()
  await press(page, '8')
  await unitKey(page).tap()
  await expect(charge).toHaveValue('6 lb 8 oz ')
  expect(await hidden()).toBe(0)
  await press(page, 'Next')
  await expect(charge).toHaveValue('6 lb 8 oz')
  expect(await hidden()).toBe(0)
})

test('[property] what is pressed while the keypad is open gets the press, though the keypad makes way and the page moves', async ({
  page,
}) => {
  await newVisit(page)
  await enter(page, PRESSURE, '118')
  await expect(keypad(page)).toBeVisible()
  // So near to the end of the page that it moves down with the room of the keypad.
  await logLines(page).first().tap()
  await expect(keypad(page)).toBeHidden()
  await page.locator('.log-open .entry-value').tap()
  await expect(keypad(page)).toBeVisible()
  await page.evaluate(() => scrollTo(0, document.documentElement.scrollHeight))
  const box = (await page.getByRole('button', { name: 'Export' }).boundingBox())!
  const saved = page.waitForEvent('download')
  await page.mouse.click(box.x + box.width / 2, box.y + box.height / 2)
  await saved
  await expect(keypad(page)).toBeHidden()
})

for (const [width, height] of [
  [390, 844],
  [320, 640],
  [667, 375],
] as const)
  test(`[property] the word of the next key stands on one line in Spanish too, at ${width} by ${height}`, async ({
    page,
  }) => {
    await page.setViewportSize({ width, height })
    await newVisit(page)
    await page.getByRole('button', { name: /^Language/ }).tap()
    await field(page, PRESSURE).tap()
    const next = page.locator('.keypad-key[data-place="next"]')
    await expect(next).toHaveText('Siguiente')
    const lines = await next.evaluate((key) => {
      const words = document.createRange()
      words.selectNodeContents(key)
      return words.getClientRects().length
    })
    expect(lines).toBe(1)
  })

const keypad = (page: Page) => page.getByRole('group', { name: 'Keypad' })
const unitKey = (page: Page) => keypad(page).getByRole('button', { name: /^Unit / })
const says = (page: Page, id: string) => page.locator(`#${id}-says`)

async function press(page: Page, ...names: readonly string[]): Promise<void> {
  for (const name of names) await keypad(page).getByRole('button', { name, exact: true }).tap()
}

/** How much of the focused field and of what it says lies under the keypad or the bar, in pixels. */
function coveredPart(): number {
  const input = document.activeElement!
  const keys = document.querySelector('.keypad')!.getBoundingClientRect()
  const bar = document.querySelector('.visit-bar')!.getBoundingClientRect()
  const { top, bottom } = input.getBoundingClientRect()
  const said = input.closest('.entry')!.querySelector('.entry-says')!.getBoundingClientRect().bottom
  return Math.max(bottom - keys.top, bar.bottom - top, said - keys.top)
}
