import type { Phone } from './phone.ts'

const RECORDS = 6

/** From the press to the record as a file; the first one also loads what writes it. */
export async function recordTimes(phone: Phone): Promise<readonly number[]> {
  const page = await phone.page()
  await page.goto('/#/visit/demo-step-by-step')
  await page.reload()
  await page.locator('#finding').waitFor()
  const times: number[] = []
  for (let i = 0; i < RECORDS; i++) {
    await page.waitForTimeout(3000)
    const key = page.getByRole('button', { name: 'Record to sign (PDF)' })
    await key.scrollIntoViewIfNeeded()
    const downloading = page.waitForEvent('download')
    const begun = performance.now()
    await key.tap()
    await downloading
    times.push(performance.now() - begun)
  }
  await page.close()
  return times
}
