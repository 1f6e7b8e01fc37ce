import { expect, type Page } from '@playwright/test'
import { enter, field, newVisit, openDemo } from '../../test/field-app.ts'
import type { Screen, Stretch } from './screen.ts'

export const FINDINGS: Stretch = {
  title: 'The finding',
  screens: [
    {
      name: 'visit-new',
      about: 'A visit without a reading: not ready, and what to read first.',
      open: seen(newVisit),
      whole: true,
    },
    { ...finding('add', 'orifice-add', 'Add: how much, in which phase, where, and why.'), whole: true },
    { ...finding('add', 'orifice-add', 'The same in a dim plant room.'), name: 'visit-add-dim', theme: 'dim' },
    { ...finding('add', 'orifice-add', 'The same in Spanish.'), name: 'visit-add-es', language: 'es', whole: true },
    finding('recover', 'orifice-recover', 'Recover: into a cylinder, and what to mind.'),
    finding('hold', 'valve-subcooling-hold', 'Hold: the charge is in its band.'),
    finding('not-the-charge', 'receiver-drier-restricted', 'Not the charge: what it is, and what tells.'),
    finding('cannot-tell', 'orifice-no-airflow-evidence', 'Cannot tell: the one reading that would.'),
    finding('not-ready', 'orifice-low-airflow', 'Not ready: what has to be put right first.'),
    {
      name: 'reasons',
      about: 'A reason unfolded, down to what was typed.',
      open: async (page) => {
        await openDemo(page, 'demo-orifice-add')
        for (let deep = 0; deep < 3; deep++) {
          await page.locator('.finding .evidence:not([open]) > summary').first().click()
        }
        await page.locator('.finding .evidence').first().scrollIntoViewIfNeeded()
        return undefined
      },
    },
    {
      name: 'what-else',
      about: 'What else it could be, and what would tell them apart.',
      open: async (page) => {
        await openDemo(page, 'demo-orifice-add')
        const fold = page.locator('.fold', { hasText: 'could' }).first()
        await fold.locator('> summary').click()
        return fold
      },
    },
  ],
}

export const ENTRY: Stretch = {
  title: 'The walk',
  screens: [
    { name: 'walk', about: 'The stations in walking order: known, missing or doubtful.', open: walk },
    { name: 'keypad', about: 'The keypad, and what was understood.', open: keypad },
    { name: 'keypad-dim', about: 'The same in a dim plant room.', open: keypad, theme: 'dim' },
    {
      name: 'keypad-doubt',
      about: 'A value that is hardly possible is questioned, not refused.',
      open: async (page) => {
        await openDemo(page, 'demo-orifice-add')
        await field(page, 'reading-suction-temperature').focus()
        await page.keyboard.type('163')
        return undefined
      },
    },
    {
      name: 'undone',
      about: 'An entry taken back, and the way forward again.',
      open: async (page) => {
        await openDemo(page, 'demo-orifice-add')
        await enter(page, 'reading-suction-temperature', '50')
        await page.locator('.bar-undo').click()
        await expect(page.locator('.undone button')).toBeVisible()
        return undefined
      },
    },
    { name: 'move', about: 'What the scale showed, where it is asked for.', open: move },
    { name: 'wait', about: 'A wait that runs, also over a locked screen and a restart.', open: wait },
    { name: 'wait-dim', about: 'The same in a dim plant room.', open: wait, theme: 'dim' },
    {
      name: 'guide',
      about: 'A long list of steps, the one at hand large.',
      open: seen((page) => openDemo(page, 'demo-capillary-weigh-in')),
    },
    {
      name: 'log',
      about: 'An entry of the log, open: what it was, why it was corrected, and the way to correct it again.',
      open: async (page) => {
        await openDemo(page, 'demo-step-by-step')
        const corrected = page.locator('.log-line').filter({ hasText: '36 °F' })
        await corrected.locator('summary').first().click()
        return corrected
      },
    },
  ],
}

function seen(open: (page: Page) => Promise<void>): Screen['open'] {
  return async (page) => {
    await open(page)
    return undefined
  }
}

function finding(kind: string, example: string, about: string): Screen {
  return {
    name: `visit-${kind}`,
    about,
    open: async (page) => {
      await openVisit(page, `demo-${example}`)
      return undefined
    },
  }
}

/** In any language. */
async function openVisit(page: Page, id: string): Promise<void> {
  await page.goto('/')
  await expect(page.locator('.row').first()).toBeVisible()
  await page.goto(`/#/visit/${id}`)
  await expect(page.locator('#finding')).toBeVisible()
  await expect(page.locator('.picture svg').first()).toBeAttached()
}

async function walk(page: Page): Promise<undefined> {
  await openDemo(page, 'demo-orifice-add')
  await page.locator('.walk').evaluate((walk) => walk.scrollIntoView())
}

async function keypad(page: Page): Promise<undefined> {
  await openDemo(page, 'demo-orifice-add')
  // Not by a press: that of a mouse would put the keypad of a phone away.
  await field(page, 'reading-suction-pressure').focus()
  await page.keyboard.type('112')
}

async function move(page: Page): Promise<undefined> {
  await openDemo(page, 'demo-orifice-add')
  await page.getByRole('button', { name: 'Enter what the scale showed' }).click()
  await page.keyboard.type('5 oz')
}

async function wait(page: Page): Promise<undefined> {
  await move(page)
  await page.keyboard.press('Enter')
  await expect(page.getByRole('timer')).toBeVisible()
  await page.clock.fastForward('06:20')
  await expect(page.getByRole('timer')).toContainText('9 min')
  await page.evaluate(() => scrollTo(0, 0))
}
