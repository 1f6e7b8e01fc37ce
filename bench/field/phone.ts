import { type Browser, chromium, devices, type Page } from '@playwright/test'
import { ADDRESS, CHROMIUM, serve } from './serve.ts'

/** How much slower than this machine the phone is taken to be. */
export const SLOWER = 4

/** A phone with the built app on it. */
export interface Phone {
  /** A page that has loaded the app once, as slow as the phone; the start page stands open on it. */
  readonly page: () => Promise<Page>
  readonly end: () => Promise<void>
}

export async function openPhone(): Promise<Phone> {
  const stop = await serve()
  const browser = await chromium.launch({ ...(CHROMIUM && { executablePath: CHROMIUM }), args: ['--no-sandbox'] })
  return {
    page: () => openPage(browser),
    end: async () => {
      await browser.close()
      stop()
    },
  }
}

async function openPage(browser: Browser) {
  const page = await browser.newPage({ ...devices['Pixel 7'], baseURL: ADDRESS })
  // What runs TypeScript here wraps every function in this name, which a page does not have.
  await page.addInitScript('globalThis.__name = (named) => named')
  await page.goto('/')
  await page.getByText('Works without a network from now on.').waitFor()
  const devtools = await page.context().newCDPSession(page)
  await devtools.send('Emulation.setCPUThrottlingRate', { rate: SLOWER })
  return page
}
