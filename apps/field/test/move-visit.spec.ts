import { expect, type Page, test } from '@playwright/test'
import { axeViolations } from './axe-violations.ts'
import { enter, field, logLines, openStart } from './field-app.ts'

test('[property] a visit begun without a system is moved to the one it was at, undone and brought back after a restart', async ({
  page,
}) => {
  await withSystem(page, 'North roof')
  await page.goto('/#/')
  await page.getByRole('button', { name: 'New visit, described on the way' }).click()
  await enter(page, 'system-name', 'nort roof')
  await enter(page, 'reading-suction-pressure', '110')
  await page.getByText('This visit was at another system').click()
  expect(await axeViolations(page, '.move-visit')).toEqual([])
  await page.getByLabel('Find a system').fill('north')
  await page.getByRole('button', { name: 'It was made at North roof' }).focus()
  await page.keyboard.press('Enter')
  await expect(page.getByText('The visit is at North roof now.')).toBeVisible()
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('North roof')
  await expect(page.locator('.visit-head-about')).toContainText('R-410A')
  await expect(logLines(page).filter({ hasText: 'Moved to the system' })).toContainText('North roof')
  await page.getByRole('link', { name: 'The system and its visits' }).click()
  await expect(page.locator('.visit-row')).toHaveCount(1)
  await page.getByRole('link', { name: 'All systems' }).click()
  const own = page.getByRole('region', { name: 'Your systems' })
  await expect(own.getByRole('link')).toHaveCount(1)

  await own.getByRole('link').click()
  await page.locator('.visit-row').click()
  await page.reload()
  await page.getByRole('button', { name: 'Undo the last entry' }).click()
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('nort roof')
  await expect(page.getByText('Undone: Moved to the system “North roof”')).toBeVisible()
  await page.getByRole('button', { name: 'Bring it back' }).click()
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('North roof')
  await expect(field(page, 'reading-suction-pressure')).toHaveValue('110.0')
})

test('[limit] on a device with no other system it says so, and leads to a new one', async ({ page }) => {
  await openStart(page)
  await page.getByRole('button', { name: 'New visit, described on the way' }).click()
  await page.getByText('This visit was at another system').click()
  await expect(page.locator('.move-visit')).toContainText('No other system on this device yet.')
  await page.locator('.move-visit').getByRole('link', { name: 'New system' }).click()
  await expect(page.getByRole('heading', { name: 'New system' })).toBeVisible()
})

test('[property] a visit that is exported by itself counts as exported', async ({ page }) => {
  await openStart(page)
  await page.getByRole('button', { name: 'New visit, described on the way' }).click()
  await enter(page, 'reading-suction-pressure', '110')
  await expect(logLines(page)).toHaveCount(1)
  await Promise.all([page.waitForEvent('download'), page.getByRole('button', { name: 'Export', exact: true }).click()])
  await page.goto('/#/')
  await expect(page.locator('.not-exported')).toHaveText('Everything entered here is in an export.')
  await page.reload()
  await expect(page.locator('.not-exported')).toHaveText('Everything entered here is in an export.')
})

async function withSystem(page: Page, name: string): Promise<void> {
  await openStart(page)
  await page.getByRole('link', { name: 'New system' }).click()
  await page.getByLabel('Name, or where it stands').fill(name)
  await page.getByLabel('Refrigerant').fill('R-410A')
  await page.getByRole('button', { name: 'Keep the system, visit later' }).click()
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(name)
}
