import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { expect, type Page, test } from '@playwright/test'
import { enter, field, logLines, newVisit, openDemo } from './field-app.ts'
import { type KillableBrowser, openKillable } from './killable-browser.ts'

/** How often the browser is killed: 5 times in every run, 50 before a release with `FIELD_KILLS=50`. */
const KILLS = Number(process.env.FIELD_KILLS ?? 5)
/** After the first entry that was kept they go on for up to this long, ms, so that a kill falls into every moment of a write. */
const LONGEST_RUN = 400
const PRESSURE = 'reading-suction-pressure'

let profile = ''
let browser: KillableBrowser | undefined

test.beforeEach(async () => {
  profile = await mkdtemp(join(tmpdir(), 'field-profile-'))
})

test.afterEach(async () => {
  await browser?.kill()
  await rm(profile, { recursive: true, force: true, maxRetries: 5 })
})

test(`[property] the browser is killed ${KILLS} times during entry: every entry shown as kept is there`, async ({
  baseURL,
}) => {
  test.setTimeout(60_000 + KILLS * 10_000)
  browser = await openKillable(profile)
  const visit = await startVisit(browser.page, baseURL!)
  const acknowledged: string[] = []
  for (let kill = 0; kill < KILLS; kill++) {
    const { page } = browser
    const before = acknowledged.length
    const entering = enterWithoutEnd(page, acknowledged)
    await expect.poll(() => acknowledged.length, { intervals: [20], timeout: 20_000 }).toBeGreaterThan(before)
    await new Promise((resolve) => setTimeout(resolve, (LONGEST_RUN * ((kill * 7) % KILLS)) / KILLS))
    await browser.kill()
    await entering
    browser = await openKillable(profile)
    await browser.page.goto(visit)
    await expect(browser.page.locator(`#${PRESSURE}`)).toBeVisible()
    const kept = await keptPressures(browser.page)
    expect(kept).toEqual(expect.arrayContaining(acknowledged))
    expect(new Set(kept).size).toBe(kept.length)
    // The log is drawn last: entries are counted on from it, and it must show each of them once.
    await expect(logLines(browser.page)).toHaveCount(kept.length)
  }
  expect(acknowledged.length).toBeGreaterThanOrEqual(KILLS)
})

test('[property] what was half typed when the browser was killed stands in its field, marked as not entered', async ({
  baseURL,
}) => {
  browser = await openKillable(profile)
  const visit = await startVisit(browser.page, baseURL!)
  await field(browser.page, PRESSURE).focus()
  await browser.page.keyboard.type('118 ps')
  await expect.poll(() => keptDrafts(browser!.page)).toEqual(['118 ps'])
  await browser.kill()
  browser = await openKillable(profile)
  const { page } = browser
  await page.goto(visit)
  await expect(field(page, PRESSURE)).toHaveValue('118 ps')
  await expect(page.locator(`#${PRESSURE}-says`)).toContainText('not entered')
  await expect(logLines(page)).toHaveCount(0)
  await field(page, PRESSURE).focus()
  await page.keyboard.type('ig')
  await page.keyboard.press('Enter')
  await expect(field(page, PRESSURE)).toHaveValue('118.0')
  await page.reload()
  await expect(field(page, PRESSURE)).toHaveValue('118.0')
  await expect(page.locator(`#${PRESSURE}-says`)).not.toContainText('not entered')
})

test('[property] a draft that outlived its entry is nothing half typed, and is let go', async ({ page }) => {
  await openDemo(page, 'demo-orifice-add')
  await page.evaluate(
    () =>
      new Promise<void>((resolve) => {
        const opening = indexedDB.open('chargewright')
        opening.onsuccess = () => {
          const writing = opening.result.transaction('drafts', 'readwrite')
          writing.objectStore('drafts').put('110 psig', 'demo-orifice-add/reading-suction-pressure')
          writing.oncomplete = () => resolve()
        }
      }),
  )
  await page.reload()
  await expect(field(page, PRESSURE)).toHaveValue('110.0')
  await expect(page.locator(`#${PRESSURE}-says`)).not.toContainText('not entered')
  await expect.poll(() => keptDrafts(page)).toEqual([])
})

test('[limit] a device that is full says so; with space again it goes on', async ({ page, baseURL }) => {
  const devtools = await page.context().newCDPSession(page)
  const { origin } = new URL(baseURL!)
  // Before the first write: the browser remembers for a while how much space there was.
  await devtools.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: 1 })
  await page.goto('/')
  await page.getByRole('button', { name: 'New visit' }).click()
  await expect(page.getByRole('alert').first()).toContainText('The storage of this device is full')
  await expect(page.getByText('No system of your own yet')).toBeVisible()
  await devtools.send('Storage.overrideQuotaForOrigin', { origin })
  await page.getByRole('button', { name: 'New visit' }).click()
  await enter(page, PRESSURE, '118')
  await expect(field(page, PRESSURE)).toHaveValue('118.0')
  await expect(logLines(page)).toHaveCount(1)
})

test('[property] a clock set back a day changes no order: the later entry holds', async ({ page }) => {
  await page.clock.install({ time: new Date('2026-02-02T10:00:00Z') })
  await newVisit(page)
  await enter(page, PRESSURE, '110')
  await expect(logLines(page)).toHaveCount(1)
  await page.clock.setSystemTime(new Date('2026-02-01T09:00:00Z'))
  await enter(page, PRESSURE, '120')
  await expect(logLines(page)).toHaveCount(2)
  await page.reload()
  await expect(field(page, PRESSURE)).toHaveValue('120.0')
  await expect(logLines(page).first()).toContainText('120')
  await page.getByRole('link', { name: 'The system and its visits' }).click()
  await expect(page.locator('.visit-row')).toHaveCount(1)
})

async function startVisit(page: Page, baseURL: string): Promise<string> {
  await page.goto(baseURL)
  await page.getByRole('button', { name: 'New visit' }).click()
  await expect(page.getByRole('heading', { name: 'New visit' })).toBeVisible()
  return page.url()
}

/** Enters pressures, each another one, until the page is gone; those that the page shows as kept are told. */
async function enterWithoutEnd(page: Page, acknowledged: string[]): Promise<void> {
  try {
    const lines = logLines(page)
    for (let n = await lines.count(); ; n++) {
      const typed = `${100 + n / 100} psig`
      await page.locator(`#${PRESSURE}`).focus({ timeout: 5000 })
      await page.keyboard.press('ControlOrMeta+a')
      await page.keyboard.insertText(typed)
      await page.keyboard.press('Enter')
      await page.locator('.log-line').nth(n).waitFor({ timeout: 5000 })
      acknowledged.push(typed)
    }
  } catch {
    // Killed in the middle of it, as it should be.
  }
}

/** The pressures in the store itself, whatever the page makes of them. */
async function keptPressures(page: Page): Promise<readonly string[]> {
  const events = await kept<{ what?: string; id: string; value: string }>(page, 'events')
  const pressures = events.filter(({ what, id }) => what === 'suction-pressure' && !id.includes('demo'))
  return pressures.map(({ value }) => value).filter((value) => / psig$/.test(value))
}

const keptDrafts = (page: Page): Promise<readonly string[]> => kept<string>(page, 'drafts')

function kept<Row>(page: Page, table: 'events' | 'drafts'): Promise<readonly Row[]> {
  return page.evaluate(
    (name) =>
      new Promise<Row[]>((resolve) => {
        const opening = indexedDB.open('chargewright')
        opening.onsuccess = () => {
          const all = opening.result.transaction(name).objectStore(name).getAll()
          all.onsuccess = () => {
            opening.result.close()
            resolve(all.result)
          }
        }
      }),
    table,
  )
}
