import { fileURLToPath } from 'node:url'
import { expect, type Page, test } from '@playwright/test'
import { build } from 'vite'
import type * as Entry from './store-contract.entry.ts'

let script = ''

test.beforeAll(async () => {
  const entry = fileURLToPath(new URL('store-contract.entry.ts', import.meta.url))
  const lib = { entry, formats: ['es' as const], fileName: 'contract' }
  const built = await build({ configFile: false, logLevel: 'error', build: { write: false, lib } })
  const [output] = Array.isArray(built) ? built : [built]
  if (output && 'output' in output) script = output.output[0].code
})

test('[property] the store in the browser keeps the contract, each case in a database of its own', async ({ page }) => {
  await openContract(page)
  const outcomes = await page.evaluate(() => (window as unknown as typeof Entry).runContract())
  expect(Object.keys(outcomes).length).toBeGreaterThan(8)
  for (const [name, outcome] of Object.entries(outcomes)) expect(outcome, name).toBe('holds')
})

/** A bare page of the same origin that carries nothing but the contract. */
async function openContract(page: Page): Promise<void> {
  await page.route('**/contract.html', (route) =>
    route.fulfill({ contentType: 'text/html', body: '<script type="module" src="contract.js"></script>' }),
  )
  await page.route('**/contract.js', (route) => route.fulfill({ contentType: 'text/javascript', body: script }))
  await page.goto('/contract.html')
  await page.waitForFunction(() => 'runContract' in window)
}
