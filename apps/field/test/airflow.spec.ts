import { expect, test } from '@playwright/test'
import { field, logLines, newVisit, openDemo, word } from './field-app.ts'

test('[property] electric heat tells the airflow, which becomes the reading of the walk with its own uncertainty', async ({
  page,
}) => {
  await newVisit(page)
  await page.locator('.walk summary', { hasText: 'Find the airflow' }).click()
  const step = page.locator('.walk .step').first()
  await step.getByLabel('Volts at the heater').fill('240 V')
  await step.getByLabel('Amps in one line').fill('41.7')
  await step.getByLabel('Rise of the air').fill('31.6')
  await step.getByRole('button', { name: 'Work the airflow out and enter it' }).click()
  await expect(step.locator('.verdict')).toContainText('by electric heat')
  await expect(field(page, 'reading-airflow')).toHaveValue(/^(9[789]\d|10[0-2]\d|1,?0[0-2]\d)$/)
  await expect(logLines(page).first()).toContainText('CFM')
  await page.getByRole('button', { name: 'Undo the last entry' }).click()
  await expect(field(page, 'reading-airflow')).toHaveValue('')
})

test('[property] a traverse tells first where the probe is held; too few points are refused with the number that fits', async ({
  page,
}) => {
  await newVisit(page)
  await page.locator('.walk summary', { hasText: 'Find the airflow' }).click()
  const step = page.locator('.walk .step').first()
  await step.getByRole('button', { name: 'traverse of a duct' }).click()
  await step.getByLabel('Width inside').fill('20 in')
  await step.getByLabel('Height inside').fill('12 in')
  await step.getByRole('button', { name: 'Tell where to hold the probe' }).click()
  await expect(step.getByRole('status')).toContainText('So far from one wall')
  await expect(step.getByLabel('Width inside')).toHaveValue('20 in')
  await step.getByLabel(/^Velocities/).fill('600 610 590')
  await step.getByRole('button', { name: 'Work the airflow out and enter it' }).click()
  await expect(step.getByRole('alert')).toContainText('25')
  await expect(logLines(page)).toHaveCount(0)
})

test('[property] an airflow found low is judged like one that was read', async ({ page }) => {
  await openDemo(page, 'demo-orifice-add')
  await page.locator('.walk summary', { hasText: 'Find the airflow' }).click()
  const step = page.locator('.walk .step').first()
  await step.getByRole('button', { name: 'the maker’s fan table' }).click()
  await step.getByLabel('External static pressure').fill('0.5')
  await step.getByLabel('The maker’s table').fill('inH2O,CFM\n0.3,640\n0.7,560')
  await step.getByRole('button', { name: 'Work the airflow out and enter it' }).click()
  await expect(word(page)).not.toHaveText('add')
})
