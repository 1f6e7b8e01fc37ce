import { INCH_POUND, METRIC, type UnitPreference } from '@chargewright/quantity'
import { describe, expect, test } from 'vitest'
import { EXAMPLES, type Example, example, exampleWith } from '../../../examples/example-visits.ts'
import { type Language, recordCsv, recordJson, renderPdf, serviceRecord } from '../src/index.ts'
import { definitionText } from './definition-text.ts'

/** A language in which every text is marked, so that a text which nobody looked up shows. */
const MARKED: Language = { tag: 'qaa', words: (english) => (/\p{L}{2}/u.test(english) ? `«${english}»` : english) }
const optionsIn = (preference: UnitPreference, language?: Language) => ({
  preference,
  created: '2026-07-01T12:00:00Z',
  ...(language ? { language } : {}),
})

/** Words outside of all marks that are no unit and that nobody typed. */
function notLookedUp(text: string, { visit }: Example): readonly string[] {
  const typed = new Set(visit.log.flatMap(({ entered }) => typedIn(entered)).flatMap(wordsIn))
  let bare = text
  // From the inside out: a mark within a mark goes first. One that was cut short ends with its line.
  while (/«[^«»]*»/.test(bare)) bare = bare.replace(/«[^«»]*»/g, '')
  const words = wordsIn(bare.replace(/«.*$/gm, ''))
  return [...new Set(words)].filter((word) => !UNITS.has(word) && !typed.has(word))
}

const wordsIn = (text: string): readonly string[] => text.match(/\p{L}{2,}/gu) ?? []

/** The texts of an entry, without the codes that it is made of. */
function typedIn(entered: unknown): readonly string[] {
  if (typeof entered === 'string') return [entered]
  if (entered === null || typeof entered !== 'object') return []
  return Object.entries(entered).flatMap(([name, value]) => (CODES.has(name) ? [] : typedIn(value)))
}

const CODES = new Set('kind what direction phase port compressor purpose criterion answer ends'.split(' '))

const UNITS = new Set('psig psia psi inHg micron bar kPa Pa lb oz kg ft in CFM ton kW cm mm min'.split(' '))

describe('a record in another language', () => {
  const all = [
    ...EXAMPLES,
    exampleWith(
      'step-by-step',
      { kind: 'reading', what: 'supply-air-dry-bulb', value: 'cold' },
      { kind: 'wait', duration: '10 min', purpose: 'equalise' },
      { kind: 'vacuum-test', criterion: 'habit' },
      { kind: 'vacuum-reading', after: '0 min', pressure: '240 micron' },
      { kind: 'vacuum-reading', after: '10 min', pressure: '400 micron' },
      { kind: 'pressure-test', gas: 'nitrogen' },
      { kind: 'weighing-gear', scaleStep: '5 g' },
    ),
  ]

  test.each(all.map((each) => [each.name, each] as const))(
    '[property] %s: no text of paper or table is left out',
    (_, each) => {
      for (const preference of [INCH_POUND, METRIC]) {
        const { content, foot, info } = serviceRecord(each.visit, each.assessment, optionsIn(preference, MARKED))
        const paper = [definitionText(content), foot, info.title, info.subject].join('\n')
        expect(notLookedUp(paper, each).filter((word) => word !== 'Chargewright')).toEqual([])
      }
    },
  )

  test('[property] the table keeps its columns, sections, keys and numbers', () => {
    const { visit, assessment } = example('step-by-step')
    const [english, marked] = [undefined, MARKED].map((language) =>
      recordCsv(visit, assessment, optionsIn(METRIC, language)).split('\r\n'),
    ) as [string[], string[]]
    expect(marked[0]).toBe(english[0])
    expect(marked.map((line) => line.split(',')[0])).toEqual(english.map((line) => line.split(',')[0]))
    expect(marked.map((line) => line.split(',').at(-1))).toEqual(english.map((line) => line.split(',').at(-1)))
    expect(marked.findLast((line) => line.endsWith(',suction-temperature'))).toMatch(
      /^reading,«Suction line»,[\d.]+ °F,[\d.]+ ± 0\.6 °C,/,
    )
  })

  test('[property] the data keep their fields, codes and numbers', () => {
    const { visit, assessment } = example('orifice-add')
    const [english, marked] = [undefined, MARKED].map((language) =>
      JSON.parse(recordJson(visit, assessment, optionsIn(METRIC, language))),
    )
    expect([english.language, marked.language]).toEqual(['en', 'qaa'])
    expect(shapeOf({ ...marked, language: 'en' })).toEqual(shapeOf(english))
    expect(marked.conditions.map(({ state }: { state: string }) => state)).toEqual(
      english.conditions.map(({ state }: { state: string }) => state),
    )
    expect(marked.finding.kind).toBe('add')
  })

  test('[property] the file says its language', async () => {
    const { visit, assessment } = example('orifice-hold')
    const file = async (language?: Language) =>
      Buffer.from(await renderPdf(serviceRecord(visit, assessment, optionsIn(METRIC, language)))).toString('latin1')
    expect(await file()).toContain('/Lang (en)')
    expect(await file(MARKED)).toContain('/Lang (qaa)')
  })
})

/** Every field and number of the data, with the texts left out. */
function shapeOf(data: unknown): unknown {
  if (typeof data === 'string') return 'text'
  if (Array.isArray(data)) return data.map(shapeOf)
  if (data === null || typeof data !== 'object') return data
  return Object.fromEntries(Object.entries(data).map(([name, value]) => [name, shapeOf(value)]))
}
