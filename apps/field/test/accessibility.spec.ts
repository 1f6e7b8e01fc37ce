import { expect, type Page, test } from '@playwright/test'
import { axeViolations } from './axe-violations.ts'
import { enter, field, newVisit, openDemo, openStart } from './field-app.ts'

test.use({ serviceWorkers: 'allow' })

/** Every screen in the states that look different. */
const SCREENS: Readonly<Record<string, (page: Page) => Promise<void>>> = {
  'the start': openStart,
  'a new visit': newVisit,
  'a visit that is not here': async (page) => {
    await page.goto('/#/visit/none')
    await expect(page.getByRole('heading', { level: 1 })).toBeVisible()
  },
  'a visit with a dose, all unfolded': async (page) => {
    await openDemo(page, 'demo-orifice-add')
    await unfoldAll(page)
  },
  'a visit that is not the charge, unfolded': async (page) => {
    await openDemo(page, 'demo-receiver-drier-restricted')
    await unfoldAll(page)
  },
  'a step at hand, a wait that runs and what to mind in an act': async (page) => {
    await openDemo(page, 'demo-orifice-add')
    await page.getByRole('button', { name: 'Enter what the scale showed' }).click()
    await page.keyboard.type('5 oz')
    await page.keyboard.press('Enter')
    await expect(page.getByRole('timer')).toBeVisible()
    await page.locator('.acts summary', { hasText: 'Adjusted' }).click()
  },
  'a visit with a field in trouble and an undo': async (page) => {
    await openDemo(page, 'demo-orifice-band-edge')
    await enter(page, 'reading-discharge-temperature', '150')
    await page.getByRole('button', { name: 'Undo the last entry' }).click()
    await enter(page, 'reading-suction-pressure', 'pasta')
    await field(page, 'reading-suction-pressure').focus()
    await expect(page.getByRole('alert')).toBeVisible()
  },
}

for (const [screen, open] of Object.entries(SCREENS)) {
  test(`[property] ${screen}, in both themes: no violation of axe, contrast at least 7:1`, async ({ page }) => {
    // All unfolded, a visit is some thousand elements, twice.
    test.slow()
    await open(page)
    expect(await axeViolations(page)).toEqual([])
  })
}

test('[property] nothing that is pressed is smaller than 48 px, work keys and acts than 64, no letter than 14 px', async ({
  page,
}) => {
  await page.setViewportSize({ width: 390, height: 844 })
  for (const open of [openStart, (p: Page) => openDemo(p, 'demo-orifice-add')]) {
    await open(page)
    await unfoldAll(page)
    const entry = page.locator('.entry-value').first()
    if (await entry.count()) await entry.focus()
    expect(await page.evaluate(tooSmall)).toEqual([])
  }
})

async function unfoldAll(page: Page): Promise<void> {
  // Twice, because a line of the log draws its inside when it is opened.
  for (let i = 0; i < 2; i++) {
    await page.evaluate(() => {
      for (const fold of document.querySelectorAll('details')) fold.open = true
    })
    await page.waitForTimeout(200)
  }
}

function tooSmall(): readonly string[] {
  const found: string[] = []
  for (const element of document.querySelectorAll<HTMLElement>('button, a, summary, input, textarea, label.key')) {
    const { width, height } = element.getBoundingClientRect()
    // The file input itself is out of sight; its label is what is pressed.
    if (!element.checkVisibility() || element.matches('[type=file]')) continue
    const isWork = element.matches('.keys .key, .act')
    const least = isWork ? 64 : 48
    if (height < least - 0.01 || (isWork && width < least))
      found.push(`${height} px high: ${element.outerHTML.slice(0, 80)}`)
  }
  for (const element of document.querySelectorAll<HTMLElement>('body *')) {
    const hasText = [...element.childNodes].some((n) => n.nodeType === Node.TEXT_NODE && n.textContent?.trim())
    if (hasText && element.checkVisibility() && Number.parseFloat(getComputedStyle(element).fontSize) < 14) {
      found.push(`small letters: ${element.outerHTML.slice(0, 80)}`)
    }
  }
  return found
}
