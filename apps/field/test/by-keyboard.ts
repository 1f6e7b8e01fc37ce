import { expect, type FileChooser, type Locator, type Page } from '@playwright/test'

/** More than a page has places for the Tab key: whoever presses it so often goes in a circle. */
const ENOUGH = 400

/** Goes to an element by Tab, or by Shift+Tab where it stands before the place one is at. */
export async function goTo(place: Locator): Promise<void> {
  const page = place.page()
  // A page that has just opened gives the focus to its heading; from then on something has it always.
  await expect(page.locator(':focus')).toBeAttached()
  for (let presses = 0; presses < ENOUGH; presses++) {
    const key = await place.evaluate(keyTowards, undefined, { timeout: 10_000 })
    if (key === undefined) return
    await page.keyboard.press(key)
  }
  throw new Error(`no Tab key leads to ${place}`)
}

/** Presses a key of the page, or follows a link of it. */
export async function press(key: Locator): Promise<void> {
  await goTo(key)
  await key.page().keyboard.press('Enter')
}

/** Takes an answer, which then is the one that holds. */
export async function take(answer: Locator): Promise<void> {
  await goTo(answer)
  await answer.page().keyboard.press('Space')
  await expect(answer).toHaveAttribute('aria-pressed', 'true')
}

/** Unfolds what stands behind a summary. */
export async function unfold(summary: Locator): Promise<void> {
  await press(summary)
  await expect(summary.locator('xpath=..')).toHaveAttribute('open')
}

/** Types into the blank one is at, over what stands there, and goes on by Enter. */
export async function type(page: Page, text: string): Promise<void> {
  await page.keyboard.press('ControlOrMeta+a')
  await page.keyboard.type(text)
  await page.keyboard.press('Enter')
}

/** Goes to a blank and types into it. */
export async function enter(blank: Locator, text: string): Promise<void> {
  await goTo(blank)
  await type(blank.page(), text)
}

/** Opens the choice of a file; which one is a matter of the device. */
export async function pick(picker: Locator, file: Parameters<FileChooser['setFiles']>[0]): Promise<void> {
  const choosing = picker.page().waitForEvent('filechooser')
  await press(picker)
  await (await choosing).setFiles(file)
}

function keyTowards(place: Element): 'Tab' | 'Shift+Tab' | undefined {
  const at = document.activeElement
  if (at === place) return
  return at && at.compareDocumentPosition(place) & Node.DOCUMENT_POSITION_PRECEDING ? 'Shift+Tab' : 'Tab'
}
