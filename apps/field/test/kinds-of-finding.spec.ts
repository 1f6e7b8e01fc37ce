import { expect, type Page, test } from '@playwright/test'
import { axeViolations } from './axe-violations.ts'
import { openDemo, word } from './field-app.ts'

/** An invented visit for each kind of finding, with its word in both languages. */
const FINDINGS = [
  { visit: 'demo-orifice-add', en: 'add', es: 'agregar' },
  { visit: 'demo-orifice-hold', en: 'hold', es: 'dejar' },
  { visit: 'demo-receiver-drier-restricted', en: 'not the charge', es: 'no es la carga' },
  { visit: 'demo-orifice-band-edge', en: 'cannot tell', es: 'no se puede saber' },
  { visit: 'demo-receiver-low-load', en: 'not ready', es: 'no está listo' },
] as const

for (const finding of FINDINGS) {
  for (const language of ['en', 'es'] as const) {
    test(`[property] “${finding[language]}” with every step open, in both themes: no violation of axe, contrast at least 7:1`, async ({
      page,
    }) => {
      test.slow()
      await openWith(page, finding.visit, language)
      await expect(word(page)).toHaveText(finding[language])
      await openSteps(page)
      expect(await axeViolations(page)).toEqual([])
    })
  }

  test(`[limit] “${finding.es}” in Spanish, unfolded: nothing to scroll sideways at 320 px or with letters twice as large`, async ({
    page,
  }) => {
    test.slow()
    await page.setViewportSize({ width: 320, height: 640 })
    await openWith(page, finding.visit, 'es')
    await expect(word(page)).toHaveText(finding.es)
    await openSteps(page)
    expect(await page.evaluate(sticksOut)).toEqual([])
    await page.setViewportSize({ width: 390, height: 844 })
    await page.evaluate(() => {
      document.documentElement.style.fontSize = '200%'
    })
    expect(await page.evaluate(sticksOut)).toEqual([])
  })
}

async function openWith(page: Page, visit: string, language: 'en' | 'es'): Promise<void> {
  await openDemo(page, visit)
  if (language === 'en') return
  await page.getByRole('button', { name: 'Language: English' }).click()
  await expect(page.locator('html')).toHaveAttribute('lang', 'es')
}

/** Opens everything but the lines of the log, and waits for the parts that are loaded then. */
async function openSteps(page: Page): Promise<void> {
  await page.evaluate(() => {
    for (const fold of document.querySelectorAll<HTMLDetailsElement>('details:not(.log details)')) fold.open = true
  })
  const steps = page.locator('.group .step')
  await expect(steps).not.toHaveCount(0)
  for (const step of await steps.all()) await expect(step).not.toBeEmpty()
  // Those within a step come with it.
  await page.evaluate(() => {
    for (const fold of document.querySelectorAll<HTMLDetailsElement>('details:not(.log details)')) fold.open = true
  })
}

/** What reaches beyond the right edge of the window. */
function sticksOut(): readonly string[] {
  const width = document.documentElement.clientWidth
  if (document.documentElement.scrollWidth <= width) return []
  return [...document.querySelectorAll<HTMLElement>('body *')]
    .filter((element) => element.checkVisibility() && element.getBoundingClientRect().right > width + 0.5)
    .map((element) => element.outerHTML.slice(0, 80))
}
