import { expect, type Locator, type Page, test } from '@playwright/test'
import { enter, goTo, press, take, type, unfold } from './by-keyboard.ts'
import { field, key, logLines, sentence, word } from './field-app.ts'
import { beginVisit, letItRun, read, restarted, signedRecord, squeezed, weigh } from './whole-visit.ts'

// Every visit is worked by keyboard alone, from the start page to the record that is opened and read; without a network
// once the system is described, and with a restart in the middle. The systems are invented.
test.use({ serviceWorkers: 'allow' })

test('[property] a whole visit: fixed orifice by superheat on a wet-bulb chart, short of charge', async ({ page }) => {
  const name = 'Test bungalow, unit 1'
  const unit = { refrigerant: 'r410a', device: 'fixed orifice', application: 'comfort cooling' }
  await beginVisit(page, { name, ...unit, capacity: '3 ton', charge: '6 lb 8 oz' })
  await letItRun(page)
  await pasteChart(page, 'wet bulb', ',62,67,72\n75,19,26,34\n85,12,19,28\n95,6,12,21\n105,,6,15')
  await read(page, { 'return-air-dry-bulb': '80', 'return-air-wet-bulb': '67', airflow: '1180 CFM' })
  await read(page, { 'suction-pressure': '110', 'suction-temperature': '63 F', 'condenser-entering-air': '35 °C' })
  await read(page, { 'liquid-pressure': '342 psig', 'liquid-temperature': '101.5' })
  await expect(word(page)).toHaveText('add')
  await expect(page.locator('.band-target-label')).toContainText('target 12.0 °F')
  await showEntryOf(page, /^Superheat/, 'typed “63 F”')

  const later = await restarted(page, name)
  await expect(sentence(later)).toHaveText(/^Add [\d.]+\soz, as vapour, at the suction service port$/)
  await weigh(later, '9.5 oz')
  await press(later.getByRole('button', { name: 'Enter: suction pressure' }))
  for (const typed of ['125', '58 °F', '95', '366', '101']) await type(later, typed)
  await readAirAgain(later, ['80', '67'])
  await expectHold(later)
  await expectRecord(later, [
    `${name} Service record`,
    'Maker’s chart entered, over wet bulb',
    'Hold · by compressor superheat',
    'wet bulb 67.0 ± 1.1 °F, typed “67 °F”',
    'Suction pressure before: 110 psig at 09:15 125 psig',
    'Suction line before: 63 F at 09:15 58 °F',
    'Air entering condenser before: 35 °C at 09:15 95 °F',
    'went in 9.5 oz',
  ])
})

test('[property] a whole visit: fixed orifice by superheat on a dry-bulb chart, read in dry bulb alone, overcharged', async ({
  page,
}) => {
  const name = 'Test town hall, annex'
  const unit = { refrigerant: 'R-410A', device: 'fixed orifice', application: 'comfort cooling' }
  await beginVisit(page, { name, ...unit, capacity: '3 ton', charge: '6 lb 8 oz' })
  await letItRun(page)
  await pasteChart(page, 'dry bulb', 'outdoor,70,75,80,85\n75,16,22,28,34\n85,11,17,24,30\n95,6,12,19,25')
  await read(page, { 'return-air-dry-bulb': '80', airflow: '1200 CFM', 'suction-pressure': '124' })
  const later = await restarted(page, name)
  await read(later, { 'suction-temperature': '54', 'condenser-entering-air': '95' })
  await read(later, { 'liquid-pressure': '390', 'liquid-temperature': '101' })
  await expect(word(later)).toHaveText('recover')
  await weigh(later, '4 oz')
  await press(later.getByRole('button', { name: 'Enter: suction pressure' }))
  for (const typed of ['114', '58', '95', '366', '101']) await type(later, typed)
  await readAirAgain(later, ['80'])
  await expectHold(later)
  await expectRecord(later, [
    `${name} Service record`,
    'Maker’s chart entered, over dry bulb',
    'Hold · by compressor superheat',
    'Target superheat 19.0 ± 1.7 °F',
    'dry bulb 80.0 ± 1.1 °F, typed “80 °F”',
    'Suction line before: 54 °F at 09:15 58 °F',
    'came out 4 oz',
  ])
})

test('[property] a whole visit: thermostatic valve with receiver, until the glass is clear under load', async ({
  page,
}) => {
  const name = 'Test grocery, walk-in'
  const unit = { refrigerant: 'R-448A', device: 'thermostatic valve', application: 'medium-temperature refrigeration' }
  await beginVisit(page, { name, ...unit, charge: '14 lb' })
  await press(key(page, 'Load on the evaporator').first())
  await take(key(page, 'doors held open'))
  await letItRun(page)
  await read(page, { 'box-temperature': '52', 'evaporator-outlet-temperature': '36', 'suction-pressure': '46' })
  await read(page, { 'suction-temperature': '48', 'condenser-entering-air': '80', 'liquid-pressure': '227' })
  await read(page, {
    'liquid-temperature': '94',
    'drier-inlet-temperature': '93.2',
    'drier-outlet-temperature': '93.0',
  })
  await press(key(page, 'Answer: sight glass'))
  await take(key(page, 'bubbles in the stream'))
  await expect(sentence(page)).toContainText('until the glass clears')
  const later = await restarted(page, name)
  await weigh(later, '1 lb 2 oz')
  await take(key(later, 'doors held open'))
  await take(key(later, 'clear, full of liquid'))
  await expectHold(later)
  await expectRecord(later, [
    `${name} Service record`,
    'Hold · by sight glass under load',
    'Receiver yes',
    'Liquid pressure 227 psig',
    'before drier 93.2 °F',
    'went in 1 lb 2 oz',
    'clear, full of liquid',
  ])
})

test('[property] a whole visit: thermostatic valve without receiver, by the subcooling of its nameplate', async ({
  page,
}) => {
  const name = 'Test terrace, heat pump'
  const unit = { refrigerant: 'R-454B', device: 'thermostatic valve', application: 'heat pump, cooling' }
  await beginVisit(page, { name, ...unit, capacity: '2.5 ton', charge: '5 lb 10 oz' })
  await letItRun(page)
  await unfold(page.locator('.system summary', { hasText: 'Nameplate' }))
  await enter(field(page, 'system-nameplateSubcooling'), '10 °F')
  await read(page, { 'return-air-dry-bulb': '78', 'return-air-wet-bulb': '65', airflow: '1000 CFM' })
  await read(page, { 'evaporator-outlet-temperature': '52', 'suction-pressure': '113', 'suction-temperature': '56.5' })
  await read(page, {
    'discharge-temperature': '179',
    'condenser-entering-air': '92',
    'condenser-leaving-air': '106.5',
  })
  await read(page, { 'liquid-pressure': '362 psig', 'liquid-temperature': '112', 'compressor-power': '2.36 kW' })
  await expect(word(page)).toHaveText('add')
  await weigh(page, '8 oz')
  const later = await restarted(page, name)
  await expect(later.getByRole('timer')).toContainText('Read again now')
  await read(later, { 'evaporator-outlet-temperature': '51', 'suction-pressure': '117', 'suction-temperature': '56' })
  await read(later, { 'condenser-entering-air': '92', 'liquid-pressure': '366', 'liquid-temperature': '103.5' })
  await expectHold(later)
  await expectRecord(later, [
    `${name} Service record`,
    'Hold · by subcooling',
    'Nameplate subcooling 10 °F',
    'Liquid line before: 112 °F at 09:15 103.5 °F',
    'Compressor power 2.36 kW',
    'went in 8 oz',
  ])
})

test('[property] a whole visit: an empty capillary system is tested, evacuated and weighed in', async ({ page }) => {
  const name = 'Test bottle cooler'
  const unit = { refrigerant: 'R-134a', device: 'capillary tube', application: 'medium-temperature refrigeration' }
  await beginVisit(page, { name, ...unit, charge: '12 oz' })

  const pressure = await openStep(page, 'Pressure test')
  await expect(pressure.locator('.cautions')).toContainText('oxygen with oil explodes')
  const gauge = { 'Last digit of the gauge': '1 psi', 'Last digit of the thermometer': '0.1 °F' }
  const first = { 'Test pressure': '150 psig', 'Temperature of the gas': '75 °F', ...gauge }
  await fill(pressure.locator('form').last(), first, 'Under dry nitrogen: begin')
  await expect(pressure.locator('.readings tbody tr')).toHaveCount(1)
  await expect(pressure).toContainText('One reading so far. Read again later')
  await page.clock.fastForward('24:00:00')
  const second = { 'Test pressure': '149 psig', 'Temperature of the gas': '72 °F' }
  await fill(pressure.locator('form').first(), second, 'Enter the reading')
  await expect(pressure.locator('.verdict-word')).toHaveText('no leak seen')
  await expect(logLines(page).first()).toContainText('149 psig at 72 °F after 24 h')

  const later = await restarted(page, name)
  const vacuum = await openStep(later, 'Evacuation')
  await expect(vacuum.locator('.cautions')).toContainText('Never run a hermetic compressor in a vacuum')
  await take(vacuum.getByRole('button', { name: /^the habit/ }))
  await fill(vacuum.locator('form').last(), { 'Vacuum as the valve is shut': '240' }, 'The valve is shut: begin')
  for (const micron of [281, 310, 329, 341, 348]) {
    await later.clock.fastForward('02:00')
    await fill(vacuum.locator('form').first(), { 'Vacuum gauge': `${micron} micron` }, 'Enter the reading')
    await expect(vacuum.locator('.readings')).toContainText(`${micron}`)
  }
  await expect(vacuum.locator('.verdict-word')).toHaveText('held')
  await expect(vacuum.locator('.picture-drawing svg')).toBeVisible()
  await press(key(vacuum, 'Enter that the system is empty and evacuated'))
  await expect(logLines(later).first()).toContainText('empty and evacuated')

  const cylinders = await openStep(later, 'Cylinders')
  const stamps = { 'Its mark': 'C4', 'Tare, stamped TW': '5 lb', 'Water capacity, stamped WC': '26 lb' }
  const cylinder = { ...stamps, 'The whole cylinder on the scale': '20 lb' }
  await fill(cylinders.locator('form'), cylinder, 'Enter the cylinder')
  await expect(cylinders.locator('.cylinders')).toContainText('only to be emptied')

  const weighIn = await openStep(later, 'Weigh-in')
  await expect(weighIn.locator('.verdict-sentence')).toHaveText('12.0 oz')
  await expect(weighIn.locator('.procedure')).toContainText('go on when: High and low side stand at the same pressure')
  await expect(weighIn.locator('.procedure')).toContainText('The capillary is blocked')
  await unfold(weighIn.locator('summary', { hasText: 'Scale, hose' }))
  const gear = weighIn.locator('details.fold', { hasText: 'Scale, hose' }).locator('form')
  await fill(gear, { 'Smallest step of the scale': '0.5 oz' }, 'Enter the gear')
  await expect(weighIn.locator('.verdict')).toContainText('too coarse')
  await press(key(weighIn, 'Enter what the scale showed'))
  await later.keyboard.type('12 oz')
  const move = later.locator('.acts form').first()
  const weights = { Cylinder: 'C4', 'The cylinder before': '20 lb', 'The cylinder after': '19.25 lb' }
  await fill(move, weights, 'Enter in the log')
  await expect(logLines(later).first()).toContainText('12 oz, as liquid')
  await expectRecord(later, [
    `${name} Service record`,
    'Standing pressure test: no leak seen',
    'Evacuation: held',
    'The vacuum held: at most 34',
    'Cylinder C4, new R-134a: adds up',
    'Holds 14.25 ±',
    'Vacuum after the valve was shut',
    'Test pressure “149 psig” at “72 °F” after “24 h',
    'went in 12 oz',
  ])
})

/** A maker's chart, typed as text behind “Nameplate”. */
async function pasteChart(page: Page, bulb: 'wet bulb' | 'dry bulb', chart: string): Promise<void> {
  await unfold(page.locator('.system summary', { hasText: 'Nameplate' }))
  await press(key(page, 'Enter the chart'))
  await take(key(page, 'Paste as text'))
  await goTo(page.getByLabel('Maker’s charging chart, as text'))
  await page.keyboard.type(chart)
  await take(key(page, bulb))
  await press(key(page, 'Keep the chart'))
  await expect(page.getByText('The chart is kept.')).toBeVisible()
}

/** Unfolds the first reason down to an entry as it was typed, and from there goes to its line in the log. */
async function showEntryOf(page: Page, measure: RegExp, typed: string): Promise<void> {
  const reason = page.locator('.finding .evidence-list > li').first()
  await unfold(reason.locator('summary').first())
  await unfold(reason.locator('summary', { hasText: measure }).nth(1))
  await unfold(reason.locator('summary', { hasText: typed }))
  await press(key(reason, 'Show the entry in the log').first())
  await expect(page.locator('.log-line summary:focus')).toContainText(/63 F/)
}

/** The air that returns cools while a system runs: it is read again although the readings that have to be are done. */
async function readAirAgain(page: Page, typed: readonly string[]): Promise<void> {
  await goTo(field(page, 'reading-return-air-dry-bulb'))
  for (const text of typed) await type(page, text)
}

async function openStep(page: Page, title: string): Promise<Locator> {
  const step = page.locator('details.group', { has: page.getByRole('heading', { name: title, exact: true }) })
  await unfold(step.locator('> summary'))
  await expect(step.locator('.step form').first()).toBeAttached()
  return step
}

async function fill(form: Locator, blanks: Readonly<Record<string, string>>, keep: string): Promise<void> {
  for (const [label, text] of Object.entries(blanks)) {
    await goTo(form.getByLabel(label, { exact: true }))
    await form.page().keyboard.type(text)
  }
  await press(key(form, keep))
}

/** The charge is right, and the finding leads to the record. */
async function expectHold(page: Page): Promise<void> {
  await expect(word(page)).toHaveText('hold')
  await press(key(page, 'Go to the record'))
  await expect(field(page, 'record')).toBeFocused()
}

/** The record says the finding of the page and these lines. */
async function expectRecord(page: Page, lines: readonly string[]): Promise<void> {
  const finding = (await sentence(page).textContent()) ?? ''
  const said = await signedRecord(page)
  for (const line of [finding, ...lines]) expect(said).toContain(squeezed(line))
}
