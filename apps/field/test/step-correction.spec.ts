import type { Fact } from '@chargewright/visit'
import { expect, type Page, test } from '@playwright/test'
import { logLines, openStart } from './field-app.ts'

interface Slip {
  readonly entered: Fact
  /** Words of its line in the log. */
  readonly line: string
  readonly blank: string
  readonly typed: string
  readonly now: string
}

/** One entry of every step, with a slip in it and the blank where it is put right. */
const SLIPS: readonly Slip[] = [
  {
    entered: { kind: 'pressure-test', gas: 'nitrogen', gauge: { name: 'own gauge', resolution: '1 psi' } },
    line: 'Pressure test',
    blank: 'Last digit of the gauge',
    typed: '0.5 psi',
    now: 'now begun under dry nitrogen',
  },
  {
    entered: { kind: 'pressure-test-reading', after: '0 min', pressure: '510 psig', temperature: '75 °F' },
    line: 'Test pressure',
    blank: 'Test pressure',
    typed: '150 psig',
    now: 'now 150 psig at 75 °F after 0 min',
  },
  {
    entered: { kind: 'vacuum-test', criterion: 'maker', start: '300 micron', limit: '50 micron', hold: '30 min' },
    line: 'Vacuum shut off',
    blank: 'Not to rise above',
    typed: '500 micron',
    now: '300 micron, at most 500 micron in 30 min',
  },
  {
    entered: { kind: 'vacuum-reading', after: '0 min', pressure: '2500 micron' },
    line: 'Vacuum',
    blank: 'Vacuum gauge',
    typed: '250 micron',
    now: 'now 250 micron after 0 min',
  },
  {
    entered: { kind: 'vacuum-log', text: '0 min, 250\n5 min, 310', unit: 'micron' },
    line: 'Log of the vacuum gauge',
    blank: 'Log of the vacuum gauge',
    typed: '0 min, 250\n5 min, 310\n10 min, 330',
    now: 'now 3 lines',
  },
  {
    entered: {
      kind: 'cylinder-weighed',
      cylinder: 'C1',
      refrigerant: 'R-134a',
      holds: 'new',
      refillable: false,
      tare: '5 lb',
      waterCapacity: '26 lb',
      gross: '52 lb',
    },
    line: 'Cylinder on the scale',
    blank: 'The whole cylinder on the scale',
    typed: '25 lb',
    now: 'now C1: 25 lb, tare 5 lb',
  },
  {
    entered: { kind: 'weighing-gear', scaleStep: '5 oz', hoseLength: '60 in' },
    line: 'Weighing gear',
    blank: 'Smallest step of the scale',
    typed: '0.5 oz',
    now: 'now scale in steps of 0.5 oz, hose 60 in long',
  },
  {
    entered: { kind: 'supply-measured', voltages: ['462 V', '46 V', '461 V'], nominal: '460 V' },
    line: 'Supply',
    blank: 'Between phases 2 and 3',
    typed: '460 V',
    now: 'now 462 V, 460 V, 461 V; nameplate 460 V',
  },
]

test('[property] an entry of every step is corrected in the log by the form of its step, and undone again', async ({
  page,
}) => {
  await withVisit(
    page,
    SLIPS.map(({ entered }) => entered),
  )
  for (const { line, blank, typed, now } of SLIPS) {
    const entry = page.locator('.log-line').filter({ has: page.locator('.log-what').getByText(line, { exact: true }) })
    await entry.locator('summary').first().focus()
    await page.keyboard.press('Enter')
    await entry.getByLabel(blank, { exact: true }).fill(typed)
    await entry.getByRole('button', { name: 'Keep the correction' }).click()
    await expect(entry.locator('summary').first()).toContainText(now)
    await page.getByRole('button', { name: 'Undo the last entry' }).click()
    await expect(entry.locator('.log-now')).toHaveCount(0)
    await page.getByRole('button', { name: 'Bring it back' }).first().click()
    await expect(entry.locator('summary').first()).toContainText(now)
  }
})

test('[limit] a correction that cannot be read names its field, and the entry stays as it was', async ({ page }) => {
  await withVisit(
    page,
    SLIPS.map(({ entered }) => entered),
  )
  const entry = logLines(page).filter({ hasText: 'Vacuum' }).filter({ hasText: '2500 micron' })
  await entry.click()
  const open = page.locator('.log-open')
  await open.getByLabel('How long after the beginning').fill('')
  await open.getByRole('button', { name: 'Keep the correction' }).click()
  await expect(open.getByRole('alert')).toContainText('How long after the beginning: missing')
  await open.getByLabel('How long after the beginning').fill('0 min')
  await open.getByLabel('Vacuum gauge').fill('pasta')
  await open.getByRole('button', { name: 'Keep the correction' }).click()
  await expect(open.getByRole('alert')).toContainText('Vacuum gauge: cannot read “pasta”')
  await expect(entry).not.toContainText('now')
})

async function withVisit(page: Page, facts: readonly Fact[]): Promise<void> {
  await openStart(page)
  const events = facts.map((fact, i) => ({ id: `e${i}`, at: '2026-06-03T13:00:00Z', ...fact }))
  const json = JSON.stringify({ format: 'chargewright-visit', version: 1, id: 'slips', events })
  const buffer = Buffer.from(json)
  await page.getByLabel('Take in a file').setInputFiles({ name: 'a.json', mimeType: 'application/json', buffer })
  await expect(page.getByText('The visit was taken in.')).toBeVisible()
  await page.goto('/#/visit/slips')
  await expect(logLines(page)).toHaveCount(facts.length)
}
