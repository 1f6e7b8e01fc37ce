import { expect, test } from '@playwright/test'
import { keepPicture } from './keep-picture.ts'
import { listScreens } from './list-screens.ts'
import { STRETCHES } from './stretches.ts'

test('README.md', listScreens)

for (const screen of STRETCHES.flatMap(({ screens }) => screens)) {
  test(screen.name, async ({ page }, { project }) => {
    await page.clock.install({ time: new Date('2026-07-01T14:00:00-05:00') })
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
    const calm = { animations: 'disabled', caret: 'hide' } as const
    keepPicture(`${screen.name}-${project.name}`, await (part ?? page).screenshot(calm))
    if (screen.whole)
      keepPicture(
        `${screen.name}-whole-${project.name}`,
        await page.screenshot({ ...calm, fullPage: true, scale: 'css' }),
      )
  })
}
