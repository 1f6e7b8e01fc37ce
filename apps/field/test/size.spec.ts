import { readdir, readFile } from 'node:fs/promises'
import { fileURLToPath } from 'node:url'
import { gzipSync } from 'node:zlib'
import { expect, type Page, test } from '@playwright/test'
import { openDemo } from './field-app.ts'

const KB = 1000
/** What a page must have loaded before one can work, compressed as it is sent. */
const START_LIMIT = 70 * KB
/** Everything that is kept for work without a network, compressed as it is sent. */
const OFFLINE_LIMIT = 1500 * KB

const dist = fileURLToPath(new URL('../dist/', import.meta.url))
const sizeOf = async (file: string) => gzipSync(await readFile(dist + file), { level: 9 }).length
const sum = (sizes: readonly number[]) => sizes.reduce((total, size) => total + size, 0)

test('[limit] start page and visit page need at most 70 kB of script; the physics loads beside them', async ({
  browser,
}) => {
  const page = await (await browser.newContext({ serviceWorkers: 'block' })).newPage()
  const loaded = scriptsOf(page)
  await openDemo(page, 'demo-orifice-add')
  await expect(page.locator('.picture')).not.toHaveCount(0)
  const { own, beside } = loaded()
  expect(own.length).toBeGreaterThan(2)
  expect(beside.join()).toContain('engine.worker')
  expect(sum(await Promise.all(own.map(sizeOf)))).toBeLessThanOrEqual(START_LIMIT)
})

test('[limit] everything that is kept for work without a network is at most 1.5 MB', async () => {
  const worker = await readFile(`${dist}sw.js`, 'utf8')
  const kept = [...new Set([...worker.matchAll(/url:"([^"]+)"/g)].map(([, url]) => url!))]
  const assets = (await readdir(`${dist}assets`)).map((name) => `assets/${name}`)
  expect(kept).toEqual(expect.arrayContaining(['index.html', ...assets]))
  expect(sum(await Promise.all(kept.map(sizeOf)))).toBeLessThanOrEqual(OFFLINE_LIMIT)
})

/** The scripts that a page loads: its own, and those of its workers. */
function scriptsOf(page: Page) {
  const scripts = new Set<string>()
  const workers = new Set<string>()
  const file = (url: string) => new URL(url).pathname.slice(1)
  page.on('request', (request) => {
    if (request.resourceType() === 'script' || request.url().endsWith('.js')) scripts.add(file(request.url()))
  })
  page.on('worker', (worker) => workers.add(file(worker.url())))
  return () => ({
    own: [...scripts].filter((script) => !workers.has(script)),
    beside: [...workers],
  })
}
