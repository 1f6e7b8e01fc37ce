import { readFile } from 'node:fs/promises'
import { expect, test } from '@playwright/test'
import { enter, logLines, newVisit } from './field-app.ts'

const figures = new URL('../../../examples/service/compressor-coefficients.csv', import.meta.url)

test('[property] figures pasted once stay with the system, and power is judged at both dew temperatures', async ({
  page,
}) => {
  await newVisit(page)
  await enter(page, 'system-refrigerant', 'R-410A')
  await enter(page, 'reading-suction-pressure', '130 psig')
  await enter(page, 'reading-suction-temperature', '65')
  await enter(page, 'reading-liquid-pressure', '364 psig')
  await enter(page, 'reading-supply-voltage', '230')
  await page.locator('.walk summary', { hasText: 'Compressor and supply' }).click()
  const step = page.locator('.walk .step').last()
  await step.locator('summary', { hasText: 'The maker’s figures' }).click()
  await step.getByLabel('Coefficients').fill('°F,power W\nC1,x')
  await step.getByRole('button', { name: 'Keep the figures' }).click()
  await expect(step.getByRole('alert')).toBeVisible()
  await step.getByLabel('Coefficients').fill(await readFile(figures, 'utf8'))
  await step.getByRole('button', { name: 'Keep the figures' }).click()
  await expect(step).toContainText('Read compressor power or current')
  await enter(page, 'reading-compressor-power', '900')
  await expect(step.locator('.verdict-word')).toHaveText('below the band')
  const curve = step.locator('.picture')
  await expect(curve.getByRole('img', { name: 'Compressor power against its maker’s figures' })).toBeVisible()
  await curve.locator('summary').click()
  await expect(curve.getByRole('columnheader').first()).toHaveText('condensing, dew, °F')
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'As a table (CSV)' }).click(),
  ])
  expect(await readFile(await download.path(), 'utf8')).toContain('check,Compressor power,,below the band')
  await page.reload()
  await page.locator('.walk summary', { hasText: 'Compressor and supply' }).click()
  await expect(page.locator('.walk .step').last().locator('.verdict-word')).toHaveText('below the band')
})

test('[property] an unbalanced supply stops the compressor; two voltages of three are asked about', async ({
  page,
}) => {
  await newVisit(page)
  await page.locator('.walk summary', { hasText: 'Compressor and supply' }).click()
  const step = page.locator('.walk .step').last()
  await step.getByLabel('Nameplate voltage').fill('460')
  await step.getByLabel('Voltage, or between phases 1 and 2').fill('500')
  await step.getByLabel('Between phases 2 and 3').fill('420')
  await step.getByRole('button', { name: 'Enter the supply' }).click()
  await expect(step.getByRole('alert')).toContainText('Between phases 3 and 1: missing')
  await step.getByLabel('Between phases 3 and 1').fill('460')
  await step.getByRole('button', { name: 'Enter the supply' }).click()
  await expect(step.locator('.verdict-word')).toHaveText('supply: do not run it')
  await expect(logLines(page).first()).toContainText('500 V, 420 V, 460 V; nameplate 460 V')
})
