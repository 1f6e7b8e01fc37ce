import { readFileSync } from 'node:fs'
import { expect, type Locator, type Page } from '@playwright/test'
import { enter, newVisit, openDemo, openStart } from '../../test/field-app.ts'
import type { Stretch } from './screen.ts'

const SERVICE = new URL('../../../../examples/service/', import.meta.url)
const service = (name: string): string => readFileSync(new URL(name, SERVICE), 'utf8')

export const STEPS: Stretch = {
  title: 'The steps of a visit',
  screens: [
    {
      name: 'step-pressure-test',
      about: 'Pressure test under nitrogen, read again after a night, corrected for its temperature.',
      open: pressureTest,
    },
    {
      name: 'step-evacuation',
      about: 'Evacuation: the log of the gauge with its fitted curve, and what it says.',
      open: evacuation,
    },
    { name: 'step-cylinders', about: 'Cylinders: what is in each, and how full it may become.', open: cylinders },
    {
      name: 'step-weigh-in',
      about: 'Weigh-in: the mass, the order of work, and what the scale and the hose leave in doubt.',
      open: weighIn,
    },
    { name: 'step-airflow', about: 'Airflow, found in the way that the site allows.', open: airflow },
    {
      name: 'step-compressor',
      about: 'Compressor against its maker’s figures, and the supply under load.',
      open: compressor,
    },
    {
      name: 'step-leak-rate',
      about: 'Leak rate by law, on the page of the system, and what is due by when.',
      open: leakRate,
    },
    {
      name: 'record',
      about: 'The record to sign, at the end of the visit page, and what is set once for all visits.',
      open: record,
    },
  ],
}

const step = (page: Page, title: string): Locator =>
  page.locator('details.group', { has: page.getByRole('heading', { name: title, exact: true }) })

/** Not by a press, which a page that still moves would lose, as it would where a mouse follows a finger. */
const unfold = (fold: Node): void => {
  ;(fold as HTMLDetailsElement).open = true
}

async function opened(page: Page, title: string): Promise<Locator> {
  const place = step(page, title)
  await place.evaluate(unfold)
  await expect(place.locator('.step form').first()).toBeAttached()
  return place
}

async function fill(form: Locator, blanks: Readonly<Record<string, string>>, keep: string): Promise<void> {
  for (const [label, text] of Object.entries(blanks)) await form.getByLabel(label, { exact: true }).fill(text)
  await form.getByRole('button', { name: keep }).press('Enter')
}

async function pressureTest(page: Page): Promise<Locator> {
  await newVisit(page)
  const place = await opened(page, 'Pressure test')
  const gauges = { 'Last digit of the gauge': '1 psi', 'Last digit of the thermometer': '0.1 °F' }
  const first = { 'Test pressure': '300 psig', 'Temperature of the gas': '75 °F', ...gauges }
  await fill(place.locator('form').last(), first, 'Under dry nitrogen: begin')
  await expect(place.locator('.readings tbody tr')).toHaveCount(1)
  await page.clock.fastForward('18:00:00')
  const second = { 'Test pressure': '294 psig', 'Temperature of the gas': '66 °F' }
  await fill(place.locator('form').first(), second, 'Enter the reading')
  await expect(place.locator('.verdict')).toBeVisible()
  return place
}

async function evacuation(page: Page): Promise<Locator> {
  await newVisit(page)
  const place = await opened(page, 'Evacuation')
  await place.locator('summary', { hasText: 'Paste the log' }).click()
  await place.getByLabel('Log of the vacuum gauge').fill(service('vacuum-levels.csv'))
  await place.getByRole('button', { name: 'Enter the log' }).click()
  await expect(place.locator('.picture svg')).toBeVisible()
  return place
}

async function cylinders(page: Page): Promise<Locator> {
  await newVisit(page)
  await enter(page, 'system-refrigerant', 'R-410A')
  const place = await opened(page, 'Cylinders')
  const form = { 'Its mark': 'C4', 'Tare, stamped TW': '27.6 lb', 'Water capacity, stamped WC': '47.6 lb' }
  await fill(place.locator('form'), { ...form, 'The whole cylinder on the scale': '41.2 lb' }, 'Enter the cylinder')
  await expect(place.locator('.cylinders')).toBeVisible()
  return place
}

async function weighIn(page: Page): Promise<Locator> {
  await openDemo(page, 'demo-line-set-weigh-in')
  return opened(page, 'Weigh-in')
}

async function airflow(page: Page): Promise<Locator> {
  await newVisit(page)
  await page.locator('.walk details.group', { hasText: 'Find the airflow' }).evaluate(unfold)
  const place = page.locator('.walk .step').first()
  const heat = { 'Volts at the heater': '240 V', 'Amps in one line': '41.7', 'Rise of the air': '31.6' }
  for (const [label, text] of Object.entries(heat)) await place.getByLabel(label).fill(text)
  await place.getByRole('button', { name: 'Work the airflow out and enter it' }).press('Enter')
  await expect(place.locator('.verdict')).toBeVisible()
  return place
}

async function compressor(page: Page): Promise<Locator> {
  await newVisit(page)
  await enter(page, 'system-refrigerant', 'R-410A')
  const readings = {
    'suction-pressure': '130 psig',
    'suction-temperature': '65',
    'liquid-pressure': '364 psig',
    'supply-voltage': '230',
    'compressor-power': '1900',
  }
  for (const [what, value] of Object.entries(readings)) await enter(page, `reading-${what}`, value)
  const places = page.locator('.walk details.group', {
    has: page.getByRole('heading', { name: 'Compressor and supply' }),
  })
  await places.evaluate(unfold)
  const place = places.locator('.step')
  await place.locator('details.fold', { hasText: 'The maker’s figures' }).evaluate(unfold)
  await place.getByLabel('Coefficients').fill(service('compressor-coefficients.csv'))
  await place.getByRole('button', { name: 'Keep the figures' }).click()
  await expect(place.locator('.verdict')).toBeVisible()
  await place.locator('details').evaluateAll((all) => {
    for (const fold of all) (fold as HTMLDetailsElement).open = false
  })
  return place
}

async function leakRate(page: Page): Promise<Locator> {
  await openStart(page)
  const file = { name: 'demo.visit.json', mimeType: 'application/json', buffer: Buffer.from(LEAKING) }
  await page.locator('input[type=file]').first().setInputFiles(file)
  await page
    .getByRole('link', { name: /Fish market/ })
    .first()
    .click()
  const place = page.locator('details', { has: page.getByRole('heading', { name: 'Leak rate by law' }) })
  await place.locator('> summary').click()
  await expect(place.locator('.verdict').first()).toBeVisible()
  return place
}

async function record(page: Page): Promise<undefined> {
  await openDemo(page, 'demo-orifice-add')
  await page.locator('.tools').evaluate((tools) => tools.scrollIntoView({ block: 'end' }))
}

const facts = {
  name: 'Fish market, walk-in box',
  refrigerant: 'R-22',
  nameplateCharge: '60 lb',
  application: 'medium-temperature',
}
const added = {
  kind: 'refrigerant-moved',
  direction: 'into-system',
  mass: '15 lb',
  phase: 'vapour',
  port: 'suction',
  compressor: 'running',
}
const LEAKING = JSON.stringify({
  format: 'chargewright-visit',
  version: 1,
  id: 'invented-leak',
  about: 'Invented.',
  events: [
    { id: 'l1', at: '2026-02-03T10:00:00Z', kind: 'system-described', facts },
    { id: 'l2', at: '2026-02-03T11:00:00Z', ...added },
  ],
})
