import { expect, type Page, test } from '@playwright/test'
import { axeViolations } from './axe-violations.ts'
import { enter, goTo, press, unfold } from './by-keyboard.ts'
import { field, key, logLines, openStart } from './field-app.ts'

test('[property] by keyboard alone a visit begun without a system is moved to the one it was at, undone and brought back after a restart', async ({
  page,
}) => {
  await withSystem(page, 'North roof')
  await press(page.getByRole('link', { name: 'All systems' }))
  await press(key(page, 'New visit, described on the way'))
  await enter(field(page, 'system-name'), 'nort roof')
  await enter(field(page, 'reading-suction-pressure'), '110')
  await unfold(page.locator('summary', { hasText: 'This visit was at another system' }))
  expect(await axeViolations(page, '.move-visit')).toEqual([])
  await goTo(page.getByLabel('Find a system'))
  await page.keyboard.type('north')
  await press(key(page, 'It was made at North roof'))
  await expect(page.getByText('The visit is at North roof now.')).toBeVisible()
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('North roof')
  await expect(page.locator('.visit-head-about')).toContainText('R-410A')
  await expect(logLines(page).filter({ hasText: 'Moved to the system' })).toContainText('North roof')
  await press(page.getByRole('link', { name: 'The system and its visits' }))
  await expect(page.locator('.visit-row')).toHaveCount(1)
  await press(page.getByRole('link', { name: 'All systems' }))
  const own = page.getByRole('region', { name: 'Your systems' })
  await expect(own.getByRole('link')).toHaveCount(1)

  await press(own.getByRole('link'))
  await press(page.locator('.visit-row'))
  await expect(logLines(page).first()).toBeVisible()
  await page.reload()
  await press(key(page, 'Undo the last entry'))
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('nort roof')
  await expect(page.getByText('Undone: Moved to the system “North roof”')).toBeVisible()
  await press(key(page, 'Bring it back'))
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('North roof')
  await expect(field(page, 'reading-suction-pressure')).toHaveValue('110.0')
})

test('[limit] on a device with no other system it says so, and leads to a new one', async ({ page }) => {
  await openStart(page)
  await press(key(page, 'New visit, described on the way'))
  await unfold(page.locator('summary', { hasText: 'This visit was at another system' }))
  await expect(page.locator('.move-visit')).toContainText('No other system on this device yet.')
  await press(page.locator('.move-visit').getByRole('link', { name: 'New system' }))
  await expect(page.getByRole('heading', { name: 'New system' })).toBeVisible()
})

test('[property] a visit that is exported by itself counts as exported', async ({ page }) => {
  await openStart(page)
  await press(key(page, 'New visit, described on the way'))
  await enter(field(page, 'reading-suction-pressure'), '110')
  await expect(logLines(page)).toHaveCount(1)
  await Promise.all([page.waitForEvent('download'), press(key(page, 'Export'))])
  await page.goto('/#/')
  await expect(page.locator('.not-exported')).toHaveText('Everything entered here is in an export.')
  await page.reload()
  await expect(page.locator('.not-exported')).toHaveText('Everything entered here is in an export.')
})

async function withSystem(page: Page, name: string): Promise<void> {
  await openStart(page)
  await press(page.getByRole('link', { name: 'New system' }))
  await enter(page.getByLabel('Name, or where it stands'), name)
  await enter(page.getByLabel('Refrigerant'), 'R-410A')
  await press(key(page, 'Keep the system, visit later'))
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(name)
}
