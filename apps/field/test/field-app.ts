import { expect, type Locator, type Page } from '@playwright/test'

/** Opens the start page and waits until the demo systems are there. */
export async function openStart(page: Page): Promise<void> {
  await page.goto('/')
  await expect(page.getByRole('heading', { name: 'Invented systems, to try it out' })).toBeVisible()
}

/** A new, empty visit. */
export async function newVisit(page: Page): Promise<void> {
  await openStart(page)
  await page.getByRole('button', { name: 'New visit' }).click()
  await expect(page.getByRole('heading', { name: 'New visit' })).toBeVisible()
}

export async function openDemo(page: Page, id: string): Promise<void> {
  await openStart(page)
  await page.goto(`/#/visit/${id}`)
  await expect(page.locator('#finding')).toBeVisible()
}

export const word = (page: Page): Locator => page.locator('.finding-word')
export const sentence = (page: Page): Locator => page.locator('#finding')
export const field = (page: Page, id: string): Locator => page.locator(`#${id}`)

/** Types into a field as with a keyboard and leaves it by Enter. */
export async function enter(page: Page, id: string, text: string): Promise<void> {
  await field(page, id).focus()
  await page.keyboard.type(text)
  await page.keyboard.press('Enter')
}

/** The lines of the log, the latest first. */
export const logLines = (page: Page): Locator => page.locator('.log-line > details > summary')

/** A button by its whole name. */
export const key = (page: Page | Locator, name: string): Locator => page.getByRole('button', { name, exact: true })
