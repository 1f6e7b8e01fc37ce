import { expect, test } from '@playwright/test'
import { openStart } from './field-app.ts'

const move = (id: string, at: string, mass: string) => ({
  id,
  at,
  kind: 'refrigerant-moved',
  direction: 'into-system',
  mass,
  phase: 'vapour',
  port: 'suction',
  compressor: 'running',
})
const facts = {
  name: 'Demo walk-in box',
  refrigerant: 'R-22',
  nameplateCharge: '60 lb',
  application: 'medium-temperature',
}
const file = JSON.stringify({
  format: 'chargewright-visit',
  version: 1,
  id: 'demo-leak',
  about: 'Invented.',
  events: [
    { id: 'l1', at: '2026-02-03T10:00:00Z', kind: 'system-described', facts },
    move('l2', '2026-02-03T11:00:00Z', '15 lb'),
  ],
})

test('[property] the page of a system tells its leak rate by both methods, and what is due by when', async ({
  page,
}) => {
  await openStart(page)
  await page
    .locator('input[type=file]')
    .first()
    .setInputFiles({
      name: 'demo.visit.json',
      mimeType: 'application/json',
      buffer: Buffer.from(file),
    })
  await page
    .getByRole('link', { name: /Demo walk-in box/ })
    .first()
    .click()
  const rate = page.locator('details', { has: page.getByRole('heading', { name: 'Leak rate by law' }) })
  await rate.locator('> summary').click()
  await expect(rate.locator('.verdict').first()).toContainText('% a year (rolling) is over the 20 %')
  const repair = rate.getByRole('listitem').filter({ hasText: 'Find and repair the leaks' })
  await expect(repair).toContainText('by 2026-03-05')
  await rate.getByRole('button', { name: 'industrial process refrigeration' }).click()
  await expect(rate.locator('.verdict').first()).toContainText('is not over the 30 %')
})
