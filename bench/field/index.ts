import { spawn, spawnSync } from 'node:child_process'
import { existsSync } from 'node:fs'
import { type CDPSession, chromium, devices, type Page } from '@playwright/test'

/** How much slower than this machine the phone is taken to be. */
const SLOWER = 4
const PRESSES = 200
const PORT = Number(process.env.FIELD_PORT ?? 4184)
const APP = new URL('../../apps/field/', import.meta.url)
const FIELD = 'reading-suction-pressure'

/** What the page measures: from the press to the understood value in the document, and to the frame that shows it. */
interface Sample {
  readonly understood_ms: number
  readonly shown_ms: number
}

spawnSync('npx', ['vite', 'build', '--logLevel', 'error'], { cwd: APP, stdio: 'inherit' })
const server = spawn('npx', ['vite', 'preview', '--port', String(PORT), '--strictPort', '--logLevel', 'error'], {
  cwd: APP,
  stdio: 'inherit',
  detached: true,
})
const executablePath = [process.env.CHROMIUM, '/usr/bin/chromium'].find((path) => path && existsSync(path))
const browser = await chromium.launch({ ...(executablePath && { executablePath }), args: ['--no-sandbox'] })
try {
  const page = await browser.newPage({ ...devices['Pixel 7'], baseURL: `http://localhost:${PORT}/` })
  const phone = await page.context().newCDPSession(page)
  await openField(page, phone)
  report('a key of the keypad', await measured(page, (digit) => tapKey(page, digit)))
  report('a key of a keyboard', await measured(page, (digit) => page.keyboard.press(digit)))
} finally {
  await browser.close()
  if (server.pid !== undefined) process.kill(-server.pid)
}

/** Opens a whole visit, as slow as the phone, with the focus in one field. */
async function openField(page: Page, phone: CDPSession): Promise<void> {
  await page.goto('/', { timeout: 60_000 }).catch(() => page.waitForTimeout(3000).then(() => page.goto('/')))
  await page.getByRole('heading', { name: 'Invented systems, to try it out' }).waitFor()
  await page.goto('/#/visit/demo-orifice-add')
  await page.locator('#finding').waitFor()
  await phone.send('Emulation.setCPUThrottlingRate', { rate: SLOWER })
  await page.locator(`#${FIELD}`).tap()
  await page.locator('.keypad').waitFor()
}

function tapKey(page: Page, digit: string): Promise<void> {
  return page.locator(`.keypad-key[data-place="digit-${digit}"]`).tap()
}

/** Presses digits, three to a number, and gathers what the page measured of each. */
async function measured(page: Page, press: (digit: string) => Promise<void>): Promise<readonly Sample[]> {
  // What runs TypeScript here wraps every function in this name, which a page does not have.
  await page.evaluate('globalThis.__name = (named) => named')
  await page.evaluate(startMeasuring, FIELD)
  for (let i = 0; i < PRESSES; i++) {
    if (i % 3 === 0) await page.locator(`#${FIELD}`).evaluate((input: HTMLInputElement) => input.select())
    await press(String((i % 9) + 1))
    await page.waitForFunction((count) => Reflect.get(window, 'samples').length > count, i)
  }
  return page.evaluate(() => Reflect.get(window, 'samples'))
}

function startMeasuring(field: string): void {
  const samples: Sample[] = []
  let pressed: number | undefined
  const press = ({ timeStamp }: Event) => {
    pressed = timeStamp
  }
  for (const kind of ['pointerup', 'keydown']) addEventListener(kind, press, { capture: true })
  const says = document.getElementById(`${field}-says`)!
  new MutationObserver(() => {
    if (pressed === undefined || !says.textContent?.includes('reads as')) return
    const from = pressed
    pressed = undefined
    const understood_ms = performance.now() - from
    requestAnimationFrame(() => setTimeout(() => samples.push({ understood_ms, shown_ms: performance.now() - from })))
  }).observe(says, { subtree: true, childList: true, characterData: true })
  Object.assign(window, { samples })
}

function report(what: string, samples: readonly Sample[]): void {
  const understood = quantiles(samples.map(({ understood_ms }) => understood_ms))
  const shown = quantiles(samples.map(({ shown_ms }) => shown_ms))
  console.log(`${what}, ${samples.length} presses, processor ${SLOWER} times slower`)
  console.log(`  until the value is understood   ${understood}`)
  console.log(`  until the frame that shows it   ${shown}`)
}

function quantiles(times: readonly number[]): string {
  const sorted = times.toSorted((a, b) => a - b)
  const at = (share: number) => sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))]!.toFixed(1)
  return `median ${at(0.5)} ms, 95 % within ${at(0.95)} ms, longest ${at(1)} ms`
}
