import { readFile } from 'node:fs/promises'
import { expect, type Page, test } from '@playwright/test'
import { pdfText } from '../../../scripts/pdf-text.ts'
import { SPANISH } from '../src/words/es/spanish.ts'
import { press } from './by-keyboard.ts'
import { enter, openStart, sentence, word } from './field-app.ts'

test.use({ serviceWorkers: 'allow' })

/** What every text of the catalogue keeps in a row whatever its values are; single words may be names and units. */
const ENGLISH = Object.entries(SPANISH)
  .filter(([english, spanish]) => english !== spanish)
  .flatMap(([english]) => english.split(/\{\d+\}/).map((part) => part.trim()))
  .filter((part) => part.length > 11 && part.includes(' '))

/** The English that a page shows or reads aloud, with everything unfolded. What somebody wrote of a visit is data. */
async function leftInEnglish(page: Page): Promise<readonly string[]> {
  const read = await page.evaluate(() => {
    for (const fold of document.querySelectorAll('details')) fold.open = true
    // A sample of a file has lines, and is written as the file is read.
    const aloud = [...document.querySelectorAll('[aria-label], [placeholder]')]
      .flatMap((element) => [element.getAttribute('aria-label'), element.getAttribute('placeholder')])
      .filter((text) => text !== null && !text.includes('\n'))
    for (const written of document.querySelectorAll('.about, .row-words')) written.remove()
    const shown = [...document.querySelectorAll('body *')].filter((element) => !element.closest('script, style'))
    const texts = shown.map(({ childNodes }) =>
      [...childNodes].map((node) => (node.nodeType === 3 ? node.nodeValue : '')),
    )
    return [...texts.map((parts) => parts.join('')), ...aloud].join('\n').replaceAll('\u00a0', ' ')
  })
  return ENGLISH.filter((part) => read.includes(part))
}

async function turnToSpanish(page: Page): Promise<void> {
  await press(page.getByRole('button', { name: 'Language: English' }))
  await expect(page.locator('html')).toHaveAttribute('lang', 'es')
}

test('[property] the language is turned over by one key, and is there again at the next start, without a network', async ({
  page,
  context,
}) => {
  await openStart(page)
  await expect(page.locator('html')).toHaveAttribute('lang', 'en')
  await turnToSpanish(page)
  await expect(page.getByRole('heading', { name: 'Sistemas', exact: true })).toBeVisible()
  expect(await leftInEnglish(page)).toEqual([])
  await page.evaluate(() => navigator.serviceWorker.ready)
  await context.setOffline(true)
  await page.reload()
  await expect(page.getByRole('heading', { name: 'Sistemas', exact: true })).toBeVisible()
  await press(page.getByRole('button', { name: 'Idioma: Español' }))
  await expect(page.getByRole('heading', { name: 'Systems', exact: true })).toBeVisible()
})

test('[property] a visit to a fixed orifice reads in Spanish from the empty page to the band', async ({ page }) => {
  await openStart(page)
  await turnToSpanish(page)
  await page.getByRole('button', { name: 'Visita nueva' }).click()
  await expect(page.getByRole('heading', { name: 'Visita nueva' })).toBeVisible()
  await expect(word(page)).toHaveText('no se puede saber')
  expect(await leftInEnglish(page)).toEqual([])

  await openSpanishDemo(page)
  await expect(word(page)).toHaveText('agregar')
  await expect(sentence(page)).toContainText(/^Agregue .*, como vapor, por el puerto de servicio de succión$/)
  await expect(page.locator('.picture')).not.toHaveCount(0)
  expect(await leftInEnglish(page)).toEqual([])

  // A reading that cannot be, and one that changes the finding.
  await enter(page, 'reading-suction-temperature', 'warm')
  await expect(page.getByRole('alert')).toContainText('no se puede leer “warm”')
  expect(await leftInEnglish(page)).toEqual([])
  await page.keyboard.press('Escape')
  await enter(page, 'reading-suction-temperature', '20 °F')
  await expect(word(page)).not.toHaveText('agregar')
  expect(await leftInEnglish(page)).toEqual([])
})

test('[property] every invented system, its visit and the practice bench read in Spanish', async ({ page }) => {
  test.slow()
  await openStart(page)
  await turnToSpanish(page)
  const systems = await page.locator('a.row').evaluateAll((rows) => rows.map((row) => row.getAttribute('href')!))
  expect(systems.length).toBeGreaterThan(2)
  for (const system of systems) {
    await page.goto(`/${system}`)
    await expect(page.locator('.visit-row .visit-outcome').first()).not.toBeEmpty()
    expect(await leftInEnglish(page), system).toEqual([])
    await page.locator('.visit-row').first().click()
    await expect(page.locator('#finding')).toBeVisible()
    expect(await leftInEnglish(page), system).toEqual([])
  }
  await page.goto('/#/practice')
  await page.getByRole('button', { name: 'Empezar un caso' }).click()
  await expect(page.getByRole('heading', { name: 'El banco' })).toBeVisible()
  expect(await leftInEnglish(page)).toEqual([])
})

test('[property] a visit entered in Spanish ends in a record in Spanish, as paper, table and data', async ({
  page,
}) => {
  await openStart(page)
  await turnToSpanish(page)
  await openSpanishDemo(page)
  await enter(page, 'reading-suction-temperature', '45 °F')
  await expect(word(page)).not.toHaveText('agregar')
  const data = JSON.parse((await saved(page, 'Como datos (JSON)')).toString())
  const paper = pdfText(await saved(page, 'Registro para firmar (PDF)'))
    .join('')
    .replace(/\s/g, '')
  for (const said of [
    'Registro de servicio',
    'Lecturas, en orden de recorrido',
    'Línea de succión',
    '45.0 ± 1.1 °F',
    'Técnico',
  ])
    expect(paper).toContain(said.replace(/\s/g, ''))
  // The words of the file that the visit came from are data.
  const ours = paper.replace(data.visit.about.replace(/\s/g, ''), '')
  expect(ENGLISH.filter((part) => ours.includes(part.replace(/\s/g, '')))).toEqual([])
  const table = (await saved(page, 'Como tabla (CSV)')).toString()
  expect(table).toMatch(/^section,item,typed/)
  expect(table).toMatch(/\nreading,Línea de succión,45 °F,45\.0 ± .*,suction-temperature\r/)
  expect(data).toMatchObject({ format: 'chargewright-record', language: 'es' })
  expect(data.readings.map(({ what }: { what: string }) => what)).toContain('suction-temperature')
})

async function saved(page: Page, key: string): Promise<Buffer> {
  const downloading = page.waitForEvent('download')
  await page.getByRole('button', { name: key }).click()
  return readFile(await (await downloading).path())
}

async function openSpanishDemo(page: Page): Promise<void> {
  await page.goto('/#/visit/demo-orifice-add')
  await expect(page.locator('#finding')).toBeVisible()
}
