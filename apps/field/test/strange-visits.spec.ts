import { checkVisitFile } from '@chargewright/visit'
import { expect, test } from '@playwright/test'
import fc from 'fast-check'
import { openDemo, openStart } from './field-app.ts'

const text = fc.oneof(
  fc.constantFrom(
    '110 psig',
    '-1e308',
    '0',
    'NaN',
    '∞ °F',
    '<b>&amp;',
    '__proto__',
    'constructor',
    '٣٤',
    '\u202eabc',
    '9'.repeat(200),
  ),
  fc.string({ unit: 'binary', minLength: 1, maxLength: 40 }),
)
const fact = fc.oneof(
  fc.record({
    kind: fc.constant('reading'),
    what: fc.constantFrom('suction-pressure', 'airflow', 'liquid-temperature'),
    value: text,
  }),
  fc.record({
    kind: fc.constant('observation'),
    what: fc.constantFrom('sight-glass', 'load', 'charge-state'),
    answer: text,
  }),
  fc.record({
    kind: fc.constant('system-described'),
    facts: fc.record(
      {
        name: fc.option(text),
        refrigerant: fc.oneof(text, fc.constantFrom('R-410A', 'R-407C', '744')),
        meteringDevice: fc.constantFrom('thermostatic', 'fixed-orifice', 'capillary', null),
        application: fc.constantFrom('comfort-cooling', 'low-temperature'),
        receiver: fc.boolean(),
        nominalCapacity: fc.oneof(text, fc.constant('3 ton')),
      },
      { requiredKeys: [] },
    ),
  }),
  fc.record({ kind: fc.constant('note'), text }),
  fc.record({ kind: fc.constant('wait'), purpose: fc.constant('settle'), duration: text }),
)
const event = fc.oneof(
  { weight: 4, arbitrary: fact },
  {
    weight: 1,
    arbitrary: fc.record({ kind: fc.constant('correction'), corrects: fc.constantFrom('e0', 'e1', 'e2', 'x') }),
  },
)

// A fixed seed: 40 files are what a minute allows.
const files = fc
  .sample(fc.array(event, { maxLength: 25 }), { seed: 20261125, numRuns: 40 })
  .map((events, n) => ({
    format: 'chargewright-visit',
    version: 1,
    id: `strange-${n}`,
    events: events.map((e, i) => ({ id: `e${i % 20}`, at: '2026-01-31T14:05:00Z', ...e })),
  }))
  .filter((file) => checkVisitFile(file).ok)

test('[limit] forty strange but valid visits are taken in, open and unfold without an error', async ({ page }) => {
  const broken: string[] = []
  page.on('pageerror', (error) => broken.push(error.message))
  expect(files.length).toBeGreaterThan(30)
  await openStart(page)
  for (const file of files) {
    const buffer = Buffer.from(JSON.stringify(file))
    await page.getByLabel('Take in a file').setInputFiles({ name: 'a.json', mimeType: 'application/json', buffer })
  }
  await expect(page.getByText('The visit was taken in.')).toBeVisible()
  for (const { id } of files) {
    await page.goto(`/#/visit/${id}`)
    await expect(page.locator('#finding')).toBeVisible()
    await page.evaluate(() => {
      for (const fold of document.querySelectorAll('details')) fold.open = true
    })
  }
  expect(broken).toEqual([])
})

test('[property] of the conditions the one that is wanting stands first', async ({ page }) => {
  await openDemo(page, 'demo-orifice-no-airflow-evidence')
  await expect(page.locator('.fold .judged .state').first()).toHaveText('not known')
  await expect(page.locator('.fold .judged .state').nth(1)).toHaveText('is met')
})

test('[limit] a row that this version cannot read takes neither the list nor the page with it', async ({ page }) => {
  await openDemo(page, 'demo-orifice-hold')
  await page.evaluate(async () => {
    const database = await new Promise<IDBDatabase>((resolve, reject) => {
      const opening = indexedDB.open('chargewright')
      opening.onsuccess = () => resolve(opening.result)
      opening.onerror = () => reject(opening.error)
    })
    const tx = database.transaction('events', 'readwrite')
    tx.objectStore('events').put({ id: 'later', at: 7, kind: 'reading', what: 'of a later version' }, [
      'demo-orifice-hold',
      900,
    ])
    await new Promise((resolve) => {
      tx.oncomplete = resolve
    })
  })
  await page.reload()
  await expect(page.getByRole('heading', { name: 'This version cannot show this visit' })).toBeVisible()
  await page.getByRole('link', { name: 'All systems' }).click()
  await page.locator('[href="#/system/demo-orifice-hold-system"]').click()
  await expect(page.locator('.visit-row').and(page.locator('[href="#/visit/demo-orifice-hold"]'))).toBeVisible()
  await page.getByRole('link', { name: 'All systems' }).click()
  await page.getByRole('link', { name: /Demo hill cabin/ }).click()
  await page.locator('.visit-row').click()
  await expect(page.locator('#finding')).toBeVisible()
})
