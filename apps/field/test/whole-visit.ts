import { readFile } from 'node:fs/promises'
import type { ReadingId } from '@chargewright/visit'
import { expect, type Page } from '@playwright/test'
import { pdfText } from '../../../scripts/pdf-text.ts'
import { enter, press, take, type } from './by-keyboard.ts'
import { field, key, logLines, openStart, word } from './field-app.ts'

interface Described {
  readonly name: string
  readonly application: string
  readonly refrigerant: string
  readonly device: string
  readonly capacity?: string
  readonly charge: string
}

/** From the start page into the first visit to a new system; from then on without a network. */
export async function beginVisit(page: Page, system: Described): Promise<void> {
  await page.clock.install({ time: new Date('2026-07-01T09:00:00') })
  await openStart(page)
  await expect(page.getByText('Works without a network from now on.')).toBeVisible()
  await press(page.getByRole('link', { name: 'New system' }))
  await enter(page.getByLabel('Name, or where it stands'), system.name)
  await take(key(page, system.application))
  await enter(page.getByLabel('Refrigerant'), system.refrigerant)
  await take(key(page, system.device))
  if (system.capacity) await enter(page.getByLabel('Nominal capacity'), system.capacity)
  // Enter in the last blank begins the visit.
  await enter(page.getByLabel('Nameplate charge'), system.charge)
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(system.name)
  await expect(word(page)).toBeVisible()
  await page.context().setOffline(true)
}

/** The page is gone, as when the device shuts down, and is opened again; the start page leads back into the visit. */
export async function restarted(page: Page, name: string): Promise<Page> {
  const context = page.context()
  await page.close()
  const again = await context.newPage()
  await openStart(again)
  await press(again.getByRole('link', { name: 'Go on with the visit at' }))
  await expect(again.getByRole('heading', { level: 1 })).toHaveText(name)
  await expect(word(again)).toBeVisible()
  return again
}

/** Lets the system run as long as the finding asks for, by the clock of the device. */
export async function letItRun(page: Page): Promise<void> {
  await press(key(page, 'Begin the wait: 15 min'))
  await expect(page.getByRole('timer')).toContainText('15 min to go')
  await page.clock.fastForward('15:01')
  await press(key(page, 'It has run: read again'))
  await expect(logLines(page).first()).toContainText('Wait to settle')
}

/** Types readings in the order of the walk. */
export async function read(page: Page, readings: Readonly<Partial<Record<ReadingId, string>>>): Promise<void> {
  for (const [id, typed] of Object.entries(readings)) await enter(field(page, `reading-${id}`), typed)
}

/** Enters what the scale showed of the step that is asked for, and waits as long as it takes to settle. */
export async function weigh(page: Page, mass: string): Promise<void> {
  await press(key(page, 'Enter what the scale showed'))
  await expect(field(page, 'moved-mass')).toBeFocused()
  await type(page, mass)
  await expect(logLines(page).first()).toContainText(mass)
  await expect(word(page)).toHaveText('not ready')
  await expect(page.getByRole('timer')).toContainText('15 min to go')
  await page.clock.fastForward('15:01')
  await expect(page.getByRole('timer')).toContainText('Read again now')
}

/** The record to sign, saved and opened: what it says, without its spaces. */
export async function signedRecord(page: Page): Promise<string> {
  const downloading = page.waitForEvent('download')
  await press(key(page, 'Record to sign (PDF)'))
  return squeezed(pdfText(await readFile(await (await downloading).path())).join(''))
}

/** A PDF sets words apart without spaces. */
export const squeezed = (text: string): string => text.replace(/\s/g, '')
