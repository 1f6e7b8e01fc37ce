import { expect, test } from '@playwright/test'
import { enter, field, logLines, newVisit } from './field-app.ts'

test('[property] two tabs on one visit show each other’s entries and lose none', async ({ page, context }) => {
  await newVisit(page)
  const other = await context.newPage()
  await other.goto(page.url())
  await enter(page, 'reading-suction-pressure', '110')
  await expect(field(other, 'reading-suction-pressure')).toHaveValue('110.0')

  // Half typed here while the other tab goes on: it stays, and both entries are kept.
  await field(page, 'reading-suction-temperature').focus()
  await page.keyboard.type('6')
  await enter(other, 'reading-liquid-pressure', '342')
  await expect(field(page, 'reading-liquid-pressure')).toHaveValue('342.0')
  await page.keyboard.type('3')
  await page.keyboard.press('Enter')
  await expect(field(other, 'reading-suction-temperature')).toHaveValue('63.0')
  await Promise.all([
    enter(page, 'reading-return-air-dry-bulb', '80'),
    enter(other, 'reading-condenser-entering-air', '95'),
  ])
  for (const tab of [page, other]) await expect(logLines(tab)).toHaveCount(5)
})
