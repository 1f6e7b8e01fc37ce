import { readFile } from 'node:fs/promises'
import { expect, type Page, test } from '@playwright/test'
import { axeViolations } from './axe-violations.ts'
import { enter, field, logLines, openStart } from './field-app.ts'

test('[property] a new system is described in one form, its visit begins with it, and defaults stay marked', async ({
  page,
}) => {
  await newSystem(page)
  await page.getByRole('button', { name: 'Begin the visit' }).click()
  await expect(page.getByRole('heading', { name: 'Test cold room' })).toBeVisible()
  await expect(page.locator('.visit-head-about')).toHaveText('R-404A · thermostatic valve · 2.8 ton')
  await page.getByRole('link', { name: 'The system and its visits' }).click()
  const assumed = page.locator('.assumed')
  await expect(assumed).toContainText('Receiver: yes')
  await assumed.getByRole('button', { name: 'It is so: Receiver' }).click()
  await expect(assumed).not.toContainText('Receiver')
  await expect(assumed).toContainText('Sight glass: yes')
})

test('[property] Enter goes from blank to blank of the form, and the refrigerant is kept by its designation', async ({
  page,
}) => {
  await openStart(page)
  await page.getByRole('link', { name: 'New system' }).click()
  await page.getByLabel('Name, or where it stands').focus()
  await page.keyboard.type('Test kiosk')
  await page.keyboard.press('Enter')
  await expect(page.getByRole('button', { name: 'comfort cooling' })).toBeFocused()
  await page.getByLabel('Refrigerant').focus()
  await page.keyboard.type('r410a')
  await page.keyboard.press('Enter')
  await expect(page.getByRole('button', { name: 'thermostatic valve' })).toBeFocused()
  await page.getByLabel('Nominal capacity').focus()
  await page.keyboard.press('Enter')
  await expect(page.getByLabel('Nameplate charge')).toBeFocused()
  await page.keyboard.press('Enter')
  await expect(page.locator('.visit-head-about')).toContainText('R-410A')
  await page.getByRole('link', { name: 'The system and its visits' }).click()
  await expect(page.locator('.label-words')).toContainText('R-410A')
})

test('[property] the charge of the nameplate is asked for with the rest of the nameplate, and read or named', async ({
  page,
}) => {
  await newSystem(page)
  await page.getByLabel('Nameplate charge').fill('heavy')
  await page.getByRole('button', { name: 'Begin the visit' }).click()
  await expect(page.getByRole('alert')).toContainText('Nameplate charge: cannot read “heavy”')
  await page.getByLabel('Nameplate charge').fill('6 lb 8 oz')
  await page.getByRole('button', { name: 'Begin the visit' }).click()
  await page.locator('.system summary', { hasText: 'Nameplate' }).click()
  await expect(field(page, 'system-nameplateCharge')).toHaveValue('6 lb 8 oz')
})

test('[property] what a visit learns is carried to the next one, the maker’s chart too', async ({ page }) => {
  await newSystem(page)
  await page.getByRole('button', { name: 'Begin the visit' }).click()
  // Not by its text alone: the form that the visit began with says “Nameplate” too, as long as it is in sight.
  await page.locator('.system summary', { hasText: 'Nameplate' }).click()
  await enter(page, 'system-nameplateCharge', '4.2 kg')
  await page.getByRole('button', { name: 'Enter the chart' }).click()
  await page.getByRole('button', { name: 'Paste as text' }).click()
  await page.locator('.chart-entry textarea').fill(',58,62\n85,12,17\n95,6,11')
  await page.getByRole('button', { name: 'Keep the chart' }).click()
  await expect(page.getByText('The chart is kept.')).toBeVisible()
  await page.getByRole('link', { name: 'The system and its visits' }).click()
  await page.getByRole('button', { name: 'New visit' }).click()
  await expect(page.getByRole('heading', { name: 'Test cold room' })).toBeVisible()
  await expect(field(page, 'system-nameplateCharge')).toHaveValue('9 lb 4.2 oz')
  const carried = page.locator('.log-line').last()
  await expect(carried).toContainText('Maker’s chart: wet-bulb chart in °F')
  await expect(page.getByRole('button', { name: 'Undo the last entry' })).toBeDisabled()
})

test('[property] the chart of a system that is alike is offered, and taken over when a person says it is the same model', async ({
  page,
}) => {
  await newSystem(page)
  await page.getByRole('button', { name: 'Keep the system, visit later' }).click()
  await page.locator('.system summary', { hasText: 'Nameplate' }).click()
  await page.getByRole('button', { name: 'Enter the chart' }).click()
  await page.getByRole('button', { name: 'Paste as text' }).click()
  await page.locator('.chart-entry textarea').fill(',58,62\n85,12,17\n95,6,11')
  await page.getByRole('button', { name: 'Keep the chart' }).click()
  await expect(page.getByText('The chart is kept.')).toBeVisible()
  await newSystem(page)
  await page.getByLabel('Name, or where it stands').fill('Test cold room 2')
  await page.getByRole('button', { name: 'Keep the system, visit later' }).click()
  const offer = page.getByRole('region', { name: 'A maker’s chart of a system like this one' })
  await expect(offer).toContainText('entered at Test cold room,')
  await offer.getByRole('button').click()
  await expect(offer).toHaveCount(0)
  await page.getByRole('button', { name: 'Undo the last entry' }).click()
  await expect(offer).toBeVisible()
})

test('[property] the history shows each visit and the trend of its measures', async ({ page }) => {
  await openStart(page)
  await page.getByRole('link', { name: 'New system' }).click()
  await page.getByLabel('Name, or where it stands').fill('Test roof')
  await page.getByLabel('Refrigerant').fill('R-22')
  await page.getByRole('button', { name: 'Keep the system, visit later' }).click()
  await expect(page.getByText('No visit yet.')).toBeVisible()
  for (const line of ['60', '50', '55']) {
    await page.getByRole('button', { name: 'New visit' }).click()
    await enter(page, 'reading-suction-pressure', '69')
    await enter(page, 'reading-suction-temperature', line)
    await expect(logLines(page)).toHaveCount(3)
    await page.getByRole('link', { name: 'The system and its visits' }).click()
  }
  await expect(page.locator('.visit-row')).toHaveCount(3)
  await expect(page.locator('.visit-row').first()).toContainText('superheat 14.7 ± 2.3 °F')
  const trend = page.locator('.picture').filter({ hasText: 'Superheat from visit to visit' })
  await expect(trend.locator('svg')).toBeVisible()
  await trend.locator('summary').click()
  await expect(trend.locator('tbody tr')).toHaveCount(3)
})

test('[property] a refrigerant is shown as it was understood, and one that could be several is asked about', async ({
  page,
}) => {
  await openStart(page)
  await page.getByRole('link', { name: 'New system' }).click()
  const blank = page.getByLabel('Refrigerant')
  await blank.fill('410a')
  await expect(page.locator('.name-read')).toHaveText('reads as R-410A')
  await blank.fill('410')
  await expect(page.locator('.name-read')).toContainText('Which one is it?')
  await page.getByRole('button', { name: 'Begin the visit' }).click()
  await expect(page.getByRole('alert')).toContainText('“410” is no one refrigerant')
  await page.getByRole('button', { name: 'R-410A', exact: true }).click()
  await expect(blank).toHaveValue('R-410A')
  await page.getByRole('button', { name: 'Begin the visit' }).click()
  await expect(page.locator('#system-refrigerant')).toHaveValue('R-410A')
  await page.locator('.system summary', { hasText: 'What it is' }).click()
  const field = page.locator('#system-refrigerant')
  await field.fill('407')
  await page.locator('.name-read').getByRole('button', { name: 'R-407C', exact: true }).click()
  await expect(field).toHaveValue('R-407C')
  await expect(page.locator('.log li')).toHaveCount(2)
})

test('[property] the search finds a system by name, refrigerant and note', async ({ page }) => {
  await openStart(page)
  for (const [name, refrigerant] of [
    ['North roof', 'R-410A'],
    ['Cellar', 'R-134a'],
  ] as const) {
    await page.getByRole('link', { name: 'New system' }).click()
    await page.getByLabel('Name, or where it stands').fill(name)
    await page.getByLabel('Refrigerant').fill(refrigerant)
    await page.getByRole('button', { name: 'Keep the system, visit later' }).click()
    await expect(page.getByRole('heading', { name })).toBeVisible()
    await page.getByRole('link', { name: 'All systems' }).click()
  }
  const own = page.getByRole('region', { name: 'Your systems' })
  await expect(own.getByRole('link')).toHaveCount(2)
  await page.getByLabel('Find a system').fill('r134a')
  await expect(own.getByRole('link')).toHaveText(/Cellar/)
  await page.getByLabel('Find a system').fill('nowhere')
  await expect(own).toContainText('No system here has all these words')
})

test('[property] a photo is kept scaled down, shown again after a restart, and taken away without being erased', async ({
  page,
}) => {
  await newSystem(page)
  await page.getByRole('button', { name: 'Keep the system, visit later' }).click()
  const bytes = await drawnPhoto(page, 3200, 2400)
  await page.getByLabel('Take a photo').setInputFiles({ name: 'a.png', mimeType: 'image/png', buffer: bytes })
  const photo = page.getByRole('img', { name: 'Nameplate' })
  await expect(photo).toBeVisible()
  await page.reload()
  await expect(photo).toBeVisible()
  const size = await photo.evaluate((img: HTMLImageElement) => [img.naturalWidth, img.naturalHeight])
  expect(size).toEqual([1600, 1200])
  await page.getByRole('button', { name: 'Take away: Nameplate' }).click()
  await expect(photo).toHaveCount(0)
  await page.getByRole('button', { name: 'Undo the last entry' }).click()
  await expect(photo).toBeVisible()
})

test('[limit] a file that is no picture is refused in words', async ({ page }) => {
  await newSystem(page)
  await page.getByRole('button', { name: 'Keep the system, visit later' }).click()
  const file = { name: 'a.jpg', mimeType: 'image/jpeg', buffer: Buffer.from('no picture') }
  await page.getByLabel('Take a photo').setInputFiles(file)
  await expect(page.getByRole('alert')).toContainText('could not be read as a picture')
})

test('[property] the label holds the address of the system and prints alone', async ({ page }) => {
  await newSystem(page)
  await page.getByRole('button', { name: 'Keep the system, visit later' }).click()
  await expect(page.getByRole('heading', { name: 'Test cold room' })).toBeVisible()
  const label = page.locator('.label')
  await expect(label.getByRole('img')).toHaveAccessibleName(`Code of ${page.url()}`)
  await page.evaluate(() => {
    document.documentElement.dataset.print = 'label'
  })
  await page.emulateMedia({ media: 'print' })
  await expect(label).toBeVisible()
  await expect(page.getByRole('heading', { name: 'Photos' })).toBeHidden()
})

test('[property] a system put aside leaves the list with its visits, and undo of nothing else is lost', async ({
  page,
}) => {
  await newSystem(page)
  await page.getByRole('button', { name: 'Keep the system, visit later' }).click()
  await page.getByRole('button', { name: 'Put this system aside' }).click()
  await expect(page.getByText('No system of your own yet')).toBeVisible()
  await page.getByText('Put aside: 1').click()
  await page.getByRole('button', { name: 'Bring back: Test cold room' }).click()
  await expect(page.getByRole('link', { name: /Test cold room/ })).toBeVisible()
})

test('[limit] a half-filled form waits over a reload, and a capacity that cannot be read is told', async ({ page }) => {
  await newSystem(page)
  await page.getByLabel('Nominal capacity').fill('plenty')
  await page.getByRole('button', { name: 'Begin the visit' }).click()
  await expect(page.getByRole('alert')).toContainText('Nominal capacity: cannot read “plenty”')
  await page.reload()
  await expect(page.getByLabel('Name, or where it stands')).toHaveValue('Test cold room')
})

test('[limit] a system that is not here says so', async ({ page }) => {
  await page.goto('/#/system/none')
  await expect(page.getByRole('heading', { name: 'This system is not on this device' })).toBeVisible()
})

for (const [screen, open] of Object.entries({ 'the new system': newSystem, 'the page of a system': openSystem })) {
  test(`[property] ${screen}, in both themes: no violation of axe, contrast at least 7:1, nothing sticks out at 320 px`, async ({
    page,
  }) => {
    await open(page)
    await page.evaluate(() => {
      for (const fold of document.querySelectorAll('details')) fold.open = true
    })
    expect(await axeViolations(page)).toEqual([])
    await page.setViewportSize({ width: 320, height: 640 })
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(320)
  })
}

async function newSystem(page: Page): Promise<void> {
  await openStart(page)
  await page.getByRole('link', { name: 'New system' }).click()
  await page.getByLabel('Name, or where it stands').fill('Test cold room')
  await page.getByLabel('Refrigerant').fill('R-404A')
  await page.getByRole('button', { name: 'medium-temperature refrigeration' }).click()
  await page.getByLabel('Nominal capacity').fill('10 kW')
}

async function openSystem(page: Page): Promise<void> {
  await openStart(page)
  await page.goto('/#/system/demo-orifice-add-system')
  await expect(page.locator('.visit-outcome').first()).toHaveText('add')
}

async function drawnPhoto(page: Page, width: number, height: number): Promise<Buffer> {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.evaluate(
      ([w, h]) => {
        const canvas = document.createElement('canvas')
        Object.assign(canvas, { width: w, height: h })
        canvas.getContext('2d')?.fillText('drawn for a test', 100, 100)
        canvas.toBlob((blob) => {
          const link = document.createElement('a')
          link.href = URL.createObjectURL(blob!)
          link.download = 'drawn.png'
          link.click()
        })
      },
      [width, height] as const,
    ),
  ])
  return readFile(await download.path())
}
