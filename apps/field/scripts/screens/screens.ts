import { expect, type Locator, type Page, test } from '@playwright/test'
import { keepPicture } from './keep-picture.ts'
import { listScreens } from './list-screens.ts'
import { STRETCHES } from './stretches.ts'

/** A page from top to bottom is cut into strips of this height, to be seen side by side. */
const STRIP_PX = 2400
const MARGIN_PX = 16
const CALM = { animations: 'disabled', caret: 'hide' } as const

test('README.md', listScreens)

for (const screen of STRETCHES.flatMap(({ screens }) => screens)) {
  test(screen.name, async ({ page, isMobile }) => {
    await page.clock.install({ time: new Date('2026-07-01T14:00:00Z') })
    await page.addInitScript(
      ({ theme, language }) => {
        if (theme) localStorage.setItem('chargewright.theme', theme)
        if (language) localStorage.setItem('chargewright.language', language)
      },
      { theme: screen.theme, language: screen.language },
    )
    const part = await screen.open(page)
    await expect(page.locator('.working')).toHaveCount(0)
    await page.evaluate(() => document.fonts.ready)
    const where = isMobile ? 'phone' : 'desk'
    const name = `${screen.name}-${where}`
    if (part && isMobile) {
      keepPicture(name, await wholePart(page, part))
      return
    }
    await part?.evaluate((shown) => shown.scrollIntoView())
    keepPicture(name, await page.screenshot(CALM))
    if (!screen.whole || !isMobile) return
    const { width, height } = await page.evaluate(() => document.documentElement.getBoundingClientRect())
    for (let y = 0; y < height; y += STRIP_PX) {
      const clip = { x: 0, y, width, height: Math.min(STRIP_PX, height - y) }
      const strip = await page.screenshot({ ...CALM, fullPage: true, scale: 'css', clip })
      keepPicture(`${screen.name}-whole-${y / STRIP_PX + 1}`, strip)
    }
  })
}

/** A part that may be longer than the glass, with the margin of the page around it. */
async function wholePart(page: Page, part: Locator): Promise<Buffer> {
  await page.evaluate(() => scrollTo(0, 0))
  const box = (await part.boundingBox())!
  const { width } = page.viewportSize()!
  const clip = { x: 0, y: box.y - MARGIN_PX, width, height: box.height + 2 * MARGIN_PX }
  return page.screenshot({ ...CALM, fullPage: true, scale: 'css', clip })
}
