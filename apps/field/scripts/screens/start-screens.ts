import { expect, type Page } from '@playwright/test'
import { openStart } from '../../test/field-app.ts'
import { takeInOwnSystems } from './own-systems.ts'
import type { Stretch } from './screen.ts'

export const START: Stretch = {
  title: 'Before the visit',
  screens: [
    {
      name: 'start-empty',
      about: 'The first start: what a system is, and invented ones to try.',
      open: openIt(openStart),
      whole: true,
    },
    {
      name: 'start',
      about: 'The systems of this device, the latest first; one visit is open.',
      open: openIt(takeInOwnSystems),
      whole: true,
    },
    { name: 'start-dim', about: 'The same in a dim plant room.', open: openIt(takeInOwnSystems), theme: 'dim' },
    {
      name: 'new-system',
      about: 'A new system in a few answers; what the trade takes as usual is marked as such.',
      open: openIt(describeSystem),
      whole: true,
    },
    {
      name: 'system',
      about: 'A system: its visits, and how its measures went from one to the next.',
      open: openIt(openSystem),
      whole: true,
    },
    {
      name: 'system-trend',
      about: 'The trend of superheat from visit to visit.',
      open: async (page) => {
        await openSystem(page)
        return page.locator('.history .picture').first()
      },
    },
  ],
}

/** A way that ends at what is seen first. */
function openIt(open: (page: Page) => Promise<void>): (page: Page) => Promise<undefined> {
  return async (page) => {
    await open(page)
    return undefined
  }
}

async function describeSystem(page: Page): Promise<void> {
  await openStart(page)
  await page.getByRole('link', { name: 'New system' }).click()
  await page.getByLabel('Name, or where it stands').fill('Market hall, cold room 3')
  await page.getByRole('button', { name: 'medium-temperature refrigeration' }).click()
  await page.getByLabel('Refrigerant').fill('R-448A')
  await page.getByLabel('Nominal capacity').fill('10 kW')
  await page.getByLabel('Nominal capacity').blur()
  await page.evaluate(() => scrollTo(0, 0))
}

async function openSystem(page: Page): Promise<void> {
  await takeInOwnSystems(page)
  await page.goto('/#/system/own-0')
  await expect(page.locator('.visit-outcome').first()).toHaveText('add')
  await expect(page.locator('.history svg').first()).toBeVisible()
}
