import { expect, type Page, test } from '@playwright/test'
import * as keyboard from './by-keyboard.ts'
import { field, key, logLines, newVisit, openDemo } from './field-app.ts'

const PRESSURE = 'reading-suction-pressure'

test('[property] the unit of one quantity is chosen by itself, for this device, also after a restart', async ({
  page,
}) => {
  await openDemo(page, 'demo-orifice-add')
  await unfold(page, 'Unit of each quantity')
  await keyboard.take(key(page.getByRole('group', { name: 'Pressure', exact: true }), 'kPa'))
  await expect(field(page, PRESSURE)).toHaveValue('758')
  await expect(field(page, 'reading-suction-temperature')).toHaveValue('63.0')
  await page.reload()
  await expect(field(page, PRESSURE)).toHaveValue('758')
  // The whole system turns over in one tap, and back to what was chosen apart from it.
  await keyboard.press(page.getByRole('button', { name: /^Units: °F/ }))
  await expect(field(page, PRESSURE)).toHaveValue('7.58')
  await keyboard.press(page.getByRole('button', { name: /^Units: °C/ }))
  await expect(field(page, PRESSURE)).toHaveValue('758')
})

test('[property] a gauge that is described once goes with every pressure from then on, and narrows what is shown beside it', async ({
  page,
}) => {
  await newVisit(page)
  await keyboard.enter(field(page, PRESSURE), '118')
  await expect(page.locator(`#${PRESSURE}-within`)).toHaveText('± 2.9')
  await unfold(page, 'My instruments')
  await keyboard.unfold(page.locator('#instrument-low-side-gauge > summary'))
  const form = page.locator('#instrument-low-side-gauge form')
  await keyboard.goTo(form.getByLabel('Name or mark'))
  await page.keyboard.type('demo manifold, red case')
  await keyboard.enter(form.getByLabel('Class'), '0.5')
  await expect(form.getByRole('alert')).toContainText('span of the instrument: missing')
  await keyboard.goTo(form.getByLabel('Span of the scale'))
  await page.keyboard.type('200 psi')
  await expect(form.getByRole('status')).toHaveText('a usual reading would be 120.0 ± 1.2 psig')
  await keyboard.press(key(form, 'Read with it from now on'))
  // What was read before was read with another one.
  await expect(page.locator(`#${PRESSURE}-within`)).toHaveText('± 2.9')
  await page.reload()
  await keyboard.enter(field(page, PRESSURE), '119')
  await expect(page.locator(`#${PRESSURE}-within`)).toHaveText('± 1.2')
  await keyboard.unfold(logLines(page).first())
  await expect(page.locator('.log-open')).toContainText('Read with: demo manifold, red case, class 0.5, span 200 psi')
  await unfold(page, 'My instruments')
  await keyboard.unfold(page.locator('#instrument-low-side-gauge > summary'))
  await keyboard.press(key(form, 'Back to a plain one'))
  await keyboard.enter(field(page, PRESSURE), '120')
  await expect(page.locator(`#${PRESSURE}-within`)).toHaveText('± 2.9')
})

test('[property] the altitude of the site comes from the device by one tap, as an entry of the visit', async ({
  page,
}) => {
  await answerLocation(page, { altitude: 1609.4, altitudeAccuracy: 8 })
  await newVisit(page)
  await unfold(page, 'Site')
  await keyboard.press(key(page, 'Take it from this device'))
  await expect(field(page, 'system-elevation')).toHaveValue('5279')
  await expect(logLines(page).first()).toContainText('Site elevation')
  await expect(logLines(page).first()).toContainText('1609 m')
})

for (const [reason, answer, words] of [
  ['knows no altitude', { altitude: null, altitudeAccuracy: null }, 'gives no altitude here'],
  ['is not sure of it', { altitude: 300, altitudeAccuracy: 250 }, 'to 820 ft only'],
  ['is not allowed', { code: 1 }, 'The location was not allowed'],
] as const) {
  test(`[limit] a device that ${reason} says so, and the altitude is typed`, async ({ page }) => {
    await answerLocation(page, answer)
    await newVisit(page)
    await unfold(page, 'Site')
    await keyboard.press(key(page, 'Take it from this device'))
    await expect(page.locator('#system-elevation-says')).toContainText(words)
    await expect(logLines(page)).toHaveCount(0)
    await keyboard.enter(field(page, 'system-elevation'), '1200')
    await expect(logLines(page).first()).toContainText('1200 ft')
  })
}

async function unfold(page: Page, title: string): Promise<void> {
  await keyboard.unfold(page.locator('summary', { has: page.getByRole('heading', { name: title, exact: true }) }))
}

/** Lets the device answer with a position, or with the code of a refusal. */
async function answerLocation(page: Page, answer: object): Promise<void> {
  await page.addInitScript((given) => {
    navigator.geolocation.getCurrentPosition = (found, refused) =>
      'code' in given ? refused?.(given as GeolocationPositionError) : found({ coords: given } as GeolocationPosition)
  }, answer)
}
