import { type ChildProcess, spawn, spawnSync } from 'node:child_process'
import { existsSync } from 'node:fs'
import { type Browser, type CDPSession, chromium, devices, type Page } from '@playwright/test'

/** How much slower than this machine the phone is taken to be. */
export const SLOWER = 4

const PORT = Number(process.env.FIELD_PORT ?? 4184)
const APP = new URL('../../apps/field/', import.meta.url)

/** A phone with the built app on it. */
export interface Phone {
  /** A page that has loaded the app once, as slow as the phone; the start page stands open on it. */
  readonly page: () => Promise<{ readonly page: Page; readonly devtools: CDPSession }>
  readonly end: () => Promise<void>
}

export async function openPhone(): Promise<Phone> {
  spawnSync('npx', ['vite', 'build', '--logLevel', 'error'], { cwd: APP, stdio: 'inherit' })
  const serving = ['vite', 'preview', '--port', `${PORT}`, '--strictPort', '--logLevel', 'error']
  const server = spawn('npx', serving, { cwd: APP, stdio: 'inherit', detached: true })
  await answering()
  const executablePath = [process.env.CHROMIUM, '/usr/bin/chromium'].find((path) => path && existsSync(path))
  const browser = await chromium.launch({ ...(executablePath && { executablePath }), args: ['--no-sandbox'] })
  return { page: () => openPage(browser), end: () => end(browser, server) }
}

async function answering(): Promise<void> {
  for (let tries = 0; tries < 100; tries++) {
    const isThere = await fetch(`http://localhost:${PORT}/`).then(
      () => true,
      () => false,
    )
    if (isThere) return
    await new Promise((resolve) => setTimeout(resolve, 200))
  }
  throw new Error(`nothing answers on port ${PORT}`)
}

async function openPage(browser: Browser) {
  const page = await browser.newPage({ ...devices['Pixel 7'], baseURL: `http://localhost:${PORT}/` })
  // What runs TypeScript here wraps every function in this name, which a page does not have.
  await page.addInitScript('globalThis.__name = (named) => named')
  await page.goto('/')
  await page.getByText('Works without a network from now on.').waitFor()
  const devtools = await page.context().newCDPSession(page)
  await devtools.send('Emulation.setCPUThrottlingRate', { rate: SLOWER })
  return { page, devtools }
}

async function end(browser: Browser, server: ChildProcess): Promise<void> {
  await browser.close()
  if (server.pid !== undefined) process.kill(-server.pid)
}
