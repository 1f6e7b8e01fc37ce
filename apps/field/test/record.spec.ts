import { readFile } from 'node:fs/promises'
import { expect, type Page, test } from '@playwright/test'
import { enter, newVisit, openDemo } from './field-app.ts'

async function saved(page: Page, key: string): Promise<{ readonly name: string; readonly text: string }> {
  const downloading = page.waitForEvent('download')
  await page.getByRole('button', { name: key }).click()
  const file = await downloading
  return { name: file.suggestedFilename(), text: await readFile(await file.path(), 'utf8') }
}

test('[property] the record is saved as a table and as data too, with the same finding', async ({ page }) => {
  await openDemo(page, 'demo-orifice-add')
  const table = await saved(page, 'As a table (CSV)')
  expect(table.name).toMatch(/\.record\.csv$/)
  expect(table.text).toContain('section,item,typed,value')
  const data = await saved(page, 'As data (JSON)')
  expect(data.name).toMatch(/\.record\.json$/)
  const record = JSON.parse(data.text)
  expect(record).toMatchObject({ format: 'chargewright-record', finding: { kind: 'add' } })
  expect(table.text).toContain(record.finding.sentence)
})

test('[property] where the device shares files the record goes to its share sheet; refused there, it is saved', async ({
  page,
}) => {
  await page.addInitScript(() => {
    const shared: string[] = []
    Object.assign(window, { shared })
    Object.assign(navigator, {
      canShare: () => true,
      share: async ({ files }: { files: File[] }) => {
        shared.push(...files.map(({ name, type, size }) => `${name} ${type} ${size > 1000}`))
        if (shared.length > 1) throw new DOMException('too late', 'NotAllowedError')
      },
    })
  })
  await openDemo(page, 'demo-orifice-add')
  await page.getByRole('button', { name: 'Share the record' }).click()
  await expect
    .poll(() => page.evaluate(() => (window as unknown as { shared: string[] }).shared.join()))
    .toMatch(/record\.pdf application\/pdf true/)
  const file = await saved(page, 'Share the record')
  expect(file.name).toMatch(/\.record\.pdf$/)
})

test.describe('in Kathmandu', () => {
  test.use({ timezoneId: 'Asia/Kathmandu' })

  test('[property] the times of a visit are those of the place, and the record names their zone', async ({ page }) => {
    await page.clock.setFixedTime(new Date('2026-06-23T20:05:00Z'))
    await newVisit(page)
    await enter(page, 'system-refrigerant', '410a')
    const { visit, system } = JSON.parse((await saved(page, 'As data (JSON)')).text)
    expect(visit.from).toBe('2026-06-24T01:50:00.000+05:45')
    expect(system.rows[0].value).toBe('R-410A')
    expect(visit.zone).toBe('Times are local, UTC+05:45, as the device told them.')
  })
})
