import { type Browser, chromium, devices, type Page } from '@playwright/test'
import { ADDRESS, CHROMIUM, serve } from './serve.ts'
import { slowEngine, slowedBy } from './slow-engine.ts'

/** How much slower than this machine the phone is taken to be. */
export const SLOWER = 4

/** A phone with the built app on it. */
export interface Phone {
  /** A page that has loaded the app once, as slow as the phone; the start page stands open on it. */
  readonly page: () => Promise<Page>
  /** How many times longer a loop takes by the browser's own slowing, on the page and in the engine. */
  readonly slowedBy: () => Promise<{ readonly page: number; readonly engine: number }>
  readonly end: () => Promise<void>
}

export async function openPhone(): Promise<Phone> {
  const stop = await serve()
  const browser = await chromium.launch({ ...(CHROMIUM && { executablePath: CHROMIUM }), args: ['--no-sandbox'] })
  return {
    page: () => openPage(browser),
    slowedBy: async () => {
      const page = await openPage(browser)
      await page.goto('/#/visit/demo-orifice-add')
      await page.locator('#finding').waitFor()
      const by = await slowedBy(page, await slowing(page), SLOWER)
      await page.close()
      return by
    },
    end: async () => {
      await browser.close()
      stop()
    },
  }
}

async function openPage(browser: Browser) {
  // The slowed engine starts by a script of its own, which the page would not allow.
  const page = await browser.newPage({ ...devices['Pixel 7'], baseURL: ADDRESS, bypassCSP: true })
  // What runs TypeScript here wraps every function in this name, which a page does not have.
  await page.addInitScript('globalThis.__name = (named) => named')
  await slowEngine(page, SLOWER)
  await page.goto('/')
  await page.getByText('Works without a network from now on.').waitFor()
  await (await slowing(page))(SLOWER)
  return page
}

/** The browser's own slowing of the processor. */
async function slowing(page: Page) {
  const devtools = await page.context().newCDPSession(page)
  return (rate: number) => devtools.send('Emulation.setCPUThrottlingRate', { rate })
}
