import { expect, test } from '@playwright/test'
import { enter, field, logLines, openDemo, openStart, word } from './field-app.ts'

test.use({ serviceWorkers: 'allow' })

test('[property] loaded once, it works and keeps entries with no network at all', async ({ page, context }) => {
  await openStart(page)
  await expect(page.getByText('Works without a network from now on.')).toBeVisible()
  await context.setOffline(true)
  await page.reload()
  await page.getByRole('button', { name: 'New visit' }).click()
  await enter(page, 'system-refrigerant', 'R-22')
  await enter(page, 'reading-suction-pressure', '69 psig')
  // Published: R-22 boils at 40 °F under 69 psig (public charging protocol, worked example); here with the words of the tree.
  await expect(page.locator('.walk')).toContainText(/Evaporating temperature \(dew\) (39\.[5-9]|40\.[0-5])\s±\s/)
  await page.reload()
  await expect(field(page, 'reading-suction-pressure')).toHaveValue('69.0')
  await expect(logLines(page)).toHaveCount(2)
})

test('[property] a second tab opens offline too, with demo systems and their findings', async ({ page, context }) => {
  await openStart(page)
  await expect(page.getByText('Works without a network from now on.')).toBeVisible()
  await context.setOffline(true)
  const tab = await context.newPage()
  await openDemo(tab, 'demo-orifice-hold')
  await expect(word(tab)).toHaveText('hold')
})

test('[property] nothing is fetched from anywhere else, and the policy of the page forbids it', async ({
  page,
  baseURL,
}) => {
  const elsewhere: string[] = []
  const violations: string[] = []
  page.on('request', (request) => {
    if (!request.url().startsWith(baseURL!) && !request.url().startsWith('blob:')) elsewhere.push(request.url())
  })
  page.on('console', (message) => {
    if (message.type() === 'error') violations.push(message.text())
  })
  await openDemo(page, 'demo-orifice-add')
  await page.getByRole('button', { name: /^Units/ }).click()
  expect(elsewhere).toEqual([])
  expect(violations).toEqual([])
  const refused = await page.evaluate(() => fetch('https://example.invalid/').then(() => 'fetched', String))
  expect(refused).toContain('Failed to fetch')
  expect(violations.join()).toContain('Content Security Policy')
})

test('[limit] a first load that breaks off half-way says so, and goes on when loaded again', async ({ browser }) => {
  const page = await (await browser.newContext({ serviceWorkers: 'block' })).newPage()
  await page.route('**/visit-screen-*.js', (route) => route.abort())
  await openStart(page)
  await page.getByRole('button', { name: 'New visit' }).click()
  await expect(page.getByRole('heading', { name: 'The network broke off while this app was loading' })).toBeVisible()
  await page.unroute('**/visit-screen-*.js')
  await page.getByRole('button', { name: 'Load again' }).click()
  await expect(word(page)).toHaveText('cannot tell')
})
