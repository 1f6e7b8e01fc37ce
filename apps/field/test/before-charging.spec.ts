import { readFile } from 'node:fs/promises'
import { expect, type Locator, type Page, test } from '@playwright/test'
import { pdfText } from '../../../scripts/pdf-text.ts'
import { axeViolations } from './axe-violations.ts'
import { enter, logLines, newVisit, openStart, word } from './field-app.ts'

test.use({ serviceWorkers: 'allow' })

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
  await page.reload()
  await open(page, 'Evacuation')
  await expect(vacuum.locator('.verdict-word')).toHaveText('held')
  await expect(vacuum.locator('.verdict-word')).not.toBeInViewport()
})

/** From an opened system to a record: what a technician types who weighs a capillary system in. */
test('[property] pressure test, vacuum, cylinder and weigh-in, offline and restarted on the way, end in a record that has them all', async ({
  page,
  context,
}) => {
  await page.clock.install({ time: new Date('2026-07-01T08:00:00') })
  await openStart(page)
  await expect(page.getByText('Works without a network from now on.')).toBeVisible()
  await page.getByRole('button', { name: 'New visit' }).click()
  await expect(page.getByRole('heading', { name: 'New visit' })).toBeVisible()
  await enter(page, 'system-name', 'Demo bottle cooler')
  await enter(page, 'system-refrigerant', 'R-134a')
  await context.setOffline(true)

  const pressure = await open(page, 'Pressure test')
  await expect(pressure.locator('.cautions')).toContainText('oxygen with oil explodes')
  await fill(
    pressure.locator('form').last(),
    {
      'Test pressure': '150 psig',
      'Temperature of the gas': '75 °F',
      'Last digit of the gauge': '1 psi',
      'Last digit of the thermometer': '0.1 °F',
    },
    'Under dry nitrogen: begin',
  )
  await expect(pressure.locator('.readings tbody tr')).toHaveCount(1)
  await expect(pressure).toContainText('One reading so far. Read again later')
  await page.clock.fastForward('24:00:00')
  await fill(
    pressure.locator('form').first(),
    { 'Test pressure': '149 psig', 'Temperature of the gas': '72 °F' },
    'Enter the reading',
  )
  await expect(pressure.locator('.verdict-word')).toHaveText('no leak seen')
  await expect(logLines(page).first()).toContainText('149 psig at 72 °F after 24 h')

  await page.reload()
  const vacuum = await open(page, 'Evacuation')
  await expect(vacuum.locator('.cautions')).toContainText('Never run a hermetic compressor in a vacuum')
  await vacuum.getByRole('button', { name: /^the habit/ }).click()
  await fill(vacuum.locator('form').last(), { 'Vacuum as the valve is shut': '240' }, 'The valve is shut: begin')
  for (const micron of [262, 281, 297, 310, 320, 329, 335, 341, 345, 348]) {
    await page.clock.fastForward('01:00')
    await fill(vacuum.locator('form').first(), { 'Vacuum gauge': `${micron} micron` }, 'Enter the reading')
    await expect(vacuum.locator('.readings')).toContainText(`${micron}`)
  }
  await expect(vacuum.locator('.verdict-word')).toHaveText('held')
  await expect(vacuum.locator('.picture-drawing svg')).toBeVisible()
  await vacuum.getByRole('button', { name: 'Enter that the system is empty and evacuated' }).click()
  await expect(logLines(page).first()).toContainText('empty and evacuated')
  await page.reload()

  const cylinders = await open(page, 'Cylinders')
  await fill(
    cylinders.locator('form'),
    {
      'Its mark': 'C4',
      'Tare, stamped TW': '5 lb',
      'Water capacity, stamped WC': '26 lb',
      'The whole cylinder on the scale': '20 lb',
    },
    'Enter the cylinder',
  )
  await expect(cylinders.locator('.cylinders')).toContainText('only to be emptied')

  await page.locator('.system summary', { hasText: 'What it is' }).click()
  await page.getByRole('button', { name: 'capillary tube' }).click()
  await page.locator('.system summary', { hasText: 'Nameplate' }).click()
  await enter(page, 'system-nameplateCharge', '12 oz')
  await expect(word(page)).toHaveText('add')
  const weighIn = await open(page, 'Weigh-in')
  await expect(weighIn.locator('.verdict-sentence')).toHaveText('12.0 oz')
  await expect(weighIn.locator('.procedure')).toContainText('go on when: High and low side stand at the same pressure')
  await expect(weighIn.locator('.procedure')).toContainText('The capillary is blocked')
  await weighIn.locator('summary', { hasText: 'Scale, hose' }).click()
  await fill(
    weighIn.locator('details.fold', { hasText: 'Scale, hose' }).locator('form'),
    { 'Smallest step of the scale': '0.5 oz' },
    'Enter the gear',
  )
  await expect(weighIn.locator('.verdict')).toContainText('too coarse')
  await weighIn.getByRole('button', { name: 'Enter what the scale showed' }).click()
  await page.keyboard.type('12 oz')
  const move = page.locator('.acts form').first()
  await move.getByLabel('Cylinder', { exact: true }).fill('C4')
  await move.getByLabel('The cylinder before').fill('20 lb')
  await move.getByLabel('The cylinder after').fill('19.25 lb')
  await move.getByRole('button', { name: 'Enter in the log' }).click()
  await expect(logLines(page).first()).toContainText('12 oz, as liquid')

  const downloading = page.waitForEvent('download')
  await page.getByRole('button', { name: 'Record to sign (PDF)' }).click()
  const said = pdfText(await readFile(await (await downloading).path()))
    .join('')
    .replace(/\s/g, '')
  for (const line of [
    'Standingpressuretest:noleakseen',
    'Evacuation:held',
    'Thevacuumheld:atmost34',
    'CylinderC4,newR-134a:addsup',
    'Holds14.25±',
    'Vacuumafterthevalvewasshut',
    'Testpressure“149psig”at“72°F”after“24h',
  ]) {
    expect(said).toContain(line)
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
