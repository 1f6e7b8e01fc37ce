import { INCH_POUND, METRIC } from '@chargewright/quantity'
import { CARRIED_OVER, type Fact, TRADE_DEFAULT } from '@chargewright/visit'
import { describe, expect, test } from 'vitest'
import { EXAMPLES, type Example, example, exampleWith, visitOf } from '../../../examples/example-visits.ts'
import { pageCount, pdfText } from '../../../scripts/pdf-text.ts'
import { type Language, renderPdf, serviceRecord } from '../src/index.ts'
import { definitionText } from './definition-text.ts'

const CREATED = '2026-07-01T12:00:00Z'
const record = ({ visit, assessment }: Example, preference = INCH_POUND) =>
  serviceRecord(visit, assessment, { preference, created: CREATED, about: 'Invented: no such system exists.' })

/** Letters alone: where a line breaks is the paper's affair. */
const letters = (text: string) => text.replace(/\s/g, '')

describe('the file of every example', () => {
  test.each(EXAMPLES.map((each) => [each.name, each] as const))(
    '[property] %s: one or two pages in both unit systems, and every paragraph can be read back',
    async (_, each) => {
      for (const preference of [INCH_POUND, METRIC]) {
        const definition = record(each, preference)
        const bytes = await renderPdf(definition)
        expect(Buffer.from(bytes.slice(0, 8)).toString('latin1')).toBe('%PDF-1.7')
        expect(pageCount(bytes)).toBeLessThanOrEqual(2)
        const printed = letters(pdfText(bytes).join(''))
        const foot = letters(definition.foot)
        expect(printed).toContain(foot)
        // A paragraph may go on after the foot of its page and the number of it.
        const running = printed
          .split(foot)
          .join('')
          .replace(/\dof\d/g, '')
        for (const paragraph of definitionText(definition.content).split('\n')) {
          expect(running).toContain(letters(paragraph).replace(/\dof\d/g, ''))
        }
      }
    },
  )
})

test('[property] the same definition gives the same bytes, and is not changed by it', async () => {
  const definition = record(example('orifice-add'))
  const before = JSON.stringify(definition)
  const [first, second] = [await renderPdf(definition), await renderPdf(definition)]
  expect(Buffer.from(first).equals(Buffer.from(second))).toBe(true)
  expect(JSON.stringify(definition)).toBe(before)
})

test('[property] the only date in the file is the one that was passed in', async () => {
  const file = Buffer.from(await renderPdf(record(example('orifice-hold')))).toString('latin1')
  expect(file.match(/D:\d{14}Z/g)).toEqual(['D:20260701120000Z'])
})

test('[property] labels of the pictures are letters of the file, not outlines', async () => {
  const printed = letters(pdfText(await renderPdf(record(example('orifice-add')))).join(''))
  for (const label of ['14.3°Fabovetarget', '67°wetbulb', 'enthalpy,Btu/lb', '4·airin95.0°F']) {
    expect(printed).toContain(label)
  }
})

test('[limit] hostile texts and many moves make more pages, and nothing is missing from them', async () => {
  const long = 'W'.repeat(200)
  const move: Fact = {
    kind: 'refrigerant-moved',
    direction: 'into-system',
    mass: '1 oz',
    phase: 'vapour',
    port: 'suction',
    compressor: 'running',
    refrigerant: long,
    cylinder: '<svg onload="x">&\u0000\ud800 漢字',
  }
  const each = exampleWith(
    'orifice-add',
    { kind: 'system-described', facts: { name: long } },
    { kind: 'note', text: '\u202e→ 😀 '.repeat(2000) },
    ...Array.from({ length: 60 }, () => move),
  )
  const definition = record(each)
  const bytes = await renderPdf(definition)
  expect(pageCount(bytes)).toBeGreaterThan(2)
  const printed = letters(pdfText(bytes).join(''))
  for (const paragraph of definitionText(definition.content).split('\n')) expect(printed).toContain(letters(paragraph))
  expect(printed.match(/compressorrunning/g)!.length).toBeGreaterThanOrEqual(60)
})

test('[limit] an empty visit is one page', async () => {
  expect(pageCount(await renderPdf(record(visitOf(), METRIC)))).toBe(1)
})

test('[property] what nobody typed is told from who did, in the language of the record; a cylinder without a name says so once', () => {
  const move: Fact = {
    kind: 'refrigerant-moved',
    direction: 'into-system',
    mass: '1 oz',
    phase: 'vapour',
    port: 'suction',
    compressor: 'running',
  }
  const by = (name: string): Fact & { readonly by: string } => ({ ...move, by: name })
  const { visit, assessment } = exampleWith('orifice-add', by('Invented Person'), by(CARRIED_OVER), by(TRADE_DEFAULT))
  const printed = (language?: Language) =>
    definitionText(
      serviceRecord(visit, assessment, { preference: METRIC, created: CREATED, ...(language && { language }) }).content,
    )
  expect(printed()).toContain('Invented Person. Not typed in this visit: carried over from the system; usual')
  expect(printed()).not.toContain('not named (not named)')
  expect(printed({ tag: 'qaa', words: (english) => `«${english}»` })).toContain('«carried over from the system»')
})
