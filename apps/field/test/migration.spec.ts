import { expect, type Page, test } from '@playwright/test'
import { enter, field, logLines } from './field-app.ts'

test('[property] visits of a store of version 1 are all here, entry by entry, at the systems of their names', async ({
  page,
}) => {
  await page.route('**/old.html', (route) => route.fulfill({ contentType: 'text/html', body: '<p>old</p>' }))
  await page.goto('/old.html')
  await page.evaluate(writeVersion1)
  await page.goto('/')
  await page.getByRole('link', { name: /clinic roof, unit 2 2 visits/ }).click()
  await expect(field(page, 'system-refrigerant')).toHaveValue('R-22')
  await expect(page.locator('.visit-row')).toHaveCount(2)
  await page.locator('[href="#/visit/second"]').click()
  await expect(logLines(page)).toHaveCount(3)
  await enter(page, 'reading-suction-pressure', '70')
  await expect(logLines(page)).toHaveCount(4)
  await page.goto('/#/visit/nameless')
  await expect(field(page, 'reading-suction-pressure')).toHaveValue('68.0')
  expect(await tables(page)).toEqual(['drafts', 'events', 'exported', 'photos', 'systems', 'visits'])
})

test('[property] a tab of the older version makes way for the newer one', async ({ page, context }) => {
  await page.route('**/old.html', (route) => route.fulfill({ contentType: 'text/html', body: '<p>old</p>' }))
  await page.goto('/old.html')
  await page.evaluate(writeVersion1)
  await page.evaluate(holdOpen)
  const newer = await context.newPage()
  await newer.goto('/')
  await expect(newer.getByRole('link', { name: /clinic roof, unit 2/ })).toBeVisible()
})

/** As version 1 of the store wrote it. */
async function writeVersion1(): Promise<void> {
  const said = (id: string, facts: object) => ({ id, at: '2026-01-31T14:05:00Z', kind: 'system-described', facts })
  const read = (id: string, value: string) => {
    return { id, at: '2026-01-31T14:06:00Z', kind: 'reading', what: 'suction-pressure', value }
  }
  const visits = {
    first: [said('f1', { name: 'Clinic roof, unit 2', refrigerant: 'R-410A' })],
    second: [said('s1', { name: 'clinic roof,  unit 2' }), said('s2', { refrigerant: 'R-22' }), read('s3', '69 psig')],
    nameless: [read('n1', '68 psig')],
  }
  const opening = indexedDB.open('chargewright', 1)
  opening.onupgradeneeded = () => {
    opening.result.createObjectStore('visits', { keyPath: 'id' })
    opening.result.createObjectStore('events')
  }
  await new Promise((resolve) => {
    opening.onsuccess = resolve
  })
  const tx = opening.result.transaction(['visits', 'events'], 'readwrite')
  for (const [id, events] of Object.entries(visits)) {
    tx.objectStore('visits').add({ id, origin: 'started-here', setAside: false })
    for (const [n, event] of events.entries()) tx.objectStore('events').add(event, [id, n])
  }
  await new Promise((resolve) => {
    tx.oncomplete = resolve
  })
  opening.result.close()
}

function holdOpen(): Promise<void> {
  return new Promise((resolve) => {
    const opening = indexedDB.open('chargewright', 1)
    opening.onsuccess = () => {
      opening.result.onversionchange = () => opening.result.close()
      resolve()
    }
  })
}

function tables(page: Page): Promise<readonly string[]> {
  return page.evaluate(
    () =>
      new Promise((resolve) => {
        const opening = indexedDB.open('chargewright')
        opening.onsuccess = () => {
          resolve([...opening.result.objectStoreNames])
          opening.result.close()
        }
      }),
  )
}
