import AxeBuilder from '@axe-core/playwright'
import type { Page } from '@playwright/test'

const ENHANCED = { rules: { 'color-contrast-enhanced': { enabled: true } }, resultTypes: ['violations' as const] }
/** What a theme can change: it sets colours and nothing else, so all other rules are asked once. */
const OF_COLOURS = { ...ENHANCED, runOnly: ['cat.color'] }

/**
 * What axe finds against the page, in both themes, each with the theme, the rule and the elements. Contrast has to be 7:1.
 * The page has no frames, so axe runs in it alone, without a second page that puts the answers of frames together.
 */
export async function axeViolations(page: Page, within = 'html'): Promise<readonly string[]> {
  const axe = new AxeBuilder({ page }).include(within).setLegacyMode()
  const found: string[] = []
  for (const [theme, options] of [
    ['outdoor', ENHANCED],
    ['dim', OF_COLOURS],
  ] as const) {
    await page.evaluate((to) => {
      document.documentElement.dataset.theme = to
    }, theme)
    const { violations } = await axe.options(options).analyze()
    found.push(...violations.map(({ id, nodes }) => `${theme}, ${id}: ${nodes.map((n) => n.html).join(' | ')}`))
  }
  return found
}
