import { expect, test } from '@playwright/test'
import { enter, field, logLines, newVisit, openStart } from './field-app.ts'

const SUCTION = 'reading-suction-pressure'

test('[limit] what cannot be read stays in its field with what is wrong, and is not kept', async ({ page }) => {
  await newVisit(page)
  const cases = [
    ['pasta', 'Suction pressure: cannot read “pasta”; expected a number with a unit: psig, bar g'],
    ['1,234 psi', 'Suction pressure: “1,234 psi” can be read in two ways'],
    ['-40 psia', 'Suction pressure: -40 psia is outside 0 to'],
    ['1e300', 'Suction pressure: 1e+300 psig is outside'],
    ['NaN', 'Suction pressure: cannot read “NaN”'],
    ['72 °F', 'Suction pressure: cannot read “72 °F”'],
    ['<img src=x onerror=alert(1)>', 'Suction pressure: cannot read “<img src=x onerror=alert(1)>”'],
    ['9'.repeat(400), 'Suction pressure: cannot read “999'],
  ] as const
  for (const [typed, problem] of cases) {
    await field(page, SUCTION).fill(typed)
    await page.keyboard.press('Enter')
    await expect(page.locator(`#${SUCTION}-says`)).toContainText(problem)
    await expect(field(page, SUCTION)).toHaveValue(typed)
    await expect(field(page, SUCTION)).toHaveAttribute('aria-invalid', 'true')
  }
  await expect(logLines(page)).toHaveCount(0)
  await field(page, SUCTION).fill('118')
  await page.keyboard.press('Enter')
  await expect(logLines(page)).toHaveCount(1)
  await expect(field(page, SUCTION)).toHaveAttribute('aria-invalid', 'false')
  // The finding still rests on what was kept: the field says so.
  await field(page, SUCTION).fill('pasta')
  await page.keyboard.press('Enter')
  await expect(page.locator(`#${SUCTION}-says`)).toContainText('“118 psig” still counts')
})

test('[limit] a text that is too long for the record is refused by the name of its field', async ({ page }) => {
  await newVisit(page)
  const long = 'x'.repeat(201)
  await field(page, 'system-name').fill(long)
  await page.keyboard.press('Enter')
  await expect(page.locator('#system-name-says')).toContainText('Name of the system: cannot read')
  await expect(page.locator('#system-name-says')).toContainText('expected at most 200 characters')
  await expect(field(page, 'system-name')).toHaveValue(long)
})

test('[property] an implausible value is kept and questioned', async ({ page }) => {
  await newVisit(page)
  await enter(page, 'reading-suction-temperature', '300')
  await expect(field(page, 'reading-suction-temperature')).toHaveValue('300.0')
  await expect(page.locator('#reading-suction-temperature-says')).toContainText('Doubtful, kept all the same')
  await expect(page.locator('#reading-suction-temperature-says')).toContainText('300 °F is outside -76 to 140 °F')
})

test('[limit] an unknown refrigerant and a strange address are told, and the page goes on', async ({ page }) => {
  await newVisit(page)
  await enter(page, 'system-refrigerant', 'R-99999 <b>')
  await expect(page.locator('main')).toContainText('“R-99999 <b>” is not known')
  await page.goto('/#/visit/%ff')
  await expect(page.getByRole('heading', { name: 'Systems', exact: true })).toBeVisible()
  await page.goto('/#/visit/nobody-has-this')
  await expect(page.getByRole('heading', { name: 'This visit is not on this device' })).toBeVisible()
  await page.getByRole('link', { name: 'All systems' }).click()
  await expect(page.getByRole('heading', { name: 'Systems', exact: true })).toBeVisible()
})

test('[limit] when the storage is full nothing is shown as kept, and what was typed waits in its field', async ({
  page,
}) => {
  await newVisit(page)
  await page.evaluate(() => {
    const add = IDBObjectStore.prototype.add
    Object.assign(window, { giveSpace: () => Object.assign(IDBObjectStore.prototype, { add }) })
    IDBObjectStore.prototype.add = () => {
      throw new DOMException('no space left', 'QuotaExceededError')
    }
  })
  await enter(page, SUCTION, '118')
  await expect(page.locator(`#${SUCTION}-says`)).toContainText('Not kept. The storage of this device is full.')
  await expect(page.locator('.kept')).toContainText('not kept')
  await expect(field(page, SUCTION)).toHaveValue('118')
  await expect(logLines(page)).toHaveCount(0)
  await page.evaluate(() => (window as unknown as { giveSpace: () => void }).giveSpace())
  await field(page, SUCTION).focus()
  await page.keyboard.press('Enter')
  await expect(field(page, SUCTION)).toHaveValue('118.0')
  await expect(page.locator('.kept')).toHaveText('kept on this device')
})

test('[limit] a browser that stores nothing is told of at once, and the page still works', async ({ page }) => {
  await page.addInitScript(() => {
    Object.defineProperty(window, 'indexedDB', {
      value: {
        open: () => {
          throw new DOMException('denied', 'SecurityError')
        },
      },
    })
    Object.defineProperty(window, 'localStorage', {
      get: () => {
        throw new DOMException('denied', 'SecurityError')
      },
    })
  })
  await openStart(page)
  await expect(page.getByRole('alert')).toContainText('This browser refuses to store anything')
  await page.getByRole('button', { name: 'New visit' }).click()
  await enter(page, SUCTION, '118')
  await expect(field(page, SUCTION)).toHaveValue('118.0')
})
