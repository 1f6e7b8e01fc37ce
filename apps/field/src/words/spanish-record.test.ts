import { INCH_POUND, METRIC, type UnitPreference } from '@chargewright/quantity'
import { renderPdf, serviceRecord } from '@chargewright/report'
import { describe, expect, test } from 'vitest'
import { EXAMPLES, type Example, exampleWith } from '../../../../examples/example-visits.ts'
import { pdfText } from '../../../../scripts/pdf-text.ts'
import { SPANISH } from './es/spanish.ts'
import { wordsOf } from './language.ts'

const wordsIn = (text: string): readonly string[] => text.toLowerCase().match(/\p{L}{3,}/gu) ?? []
const spanish = new Set(Object.values(SPANISH).flatMap(wordsIn))
/** Words that stand in English entries and in no Spanish one. */
const ENGLISH = new Set(
  Object.keys(SPANISH)
    .flatMap(wordsIn)
    .filter((word) => !spanish.has(word)),
)

/** The English of a text, without what somebody typed and without the names that a program gave the visit. */
function english(text: string, { visit }: Example): readonly string[] {
  const typed = visit.log.map(
    ({ by = '', entered, corrections }) => `${by} ${typedIn(entered)} ${typedIn(corrections)}`,
  )
  const kept = new Set(wordsIn(`${visit.id} ${typed.join(' ')}`))
  return [...new Set(wordsIn(text))].filter((word) => ENGLISH.has(word) && !kept.has(word) && !UNITS.has(word))
}

/** The texts of an entry, without the codes that it is made of. */
function typedIn(entered: unknown): string {
  if (typeof entered === 'string') return entered
  if (entered === null || typeof entered !== 'object') return ''
  const parts = Object.entries(entered).map(([name, value]) => (CODES.has(name) ? '' : typedIn(value)))
  return parts.join(' ')
}

const CODES = new Set('kind what direction phase port compressor purpose criterion answer ends by at'.split(' '))
/** Of units. */
const UNITS = new Set(['ton', 'min'])

/** A visit with an entry of every kind, some of which cannot be used. */
const everything = exampleWith(
  'step-by-step',
  { kind: 'reading', what: 'supply-air-dry-bulb', value: 'cold' },
  { kind: 'reading', what: 'condenser-leaving-air', value: '250 °F' },
  { kind: 'wait', duration: '10 min', purpose: 'equalise' },
  { kind: 'vacuum-test', criterion: 'habit' },
  { kind: 'vacuum-reading', after: '0 min', pressure: '240 micron' },
  { kind: 'vacuum-reading', after: '10 min', pressure: '400 micron' },
  { kind: 'pressure-test-reading', after: '0 h', pressure: '300 psig', temperature: '75 °F' },
  { kind: 'pressure-test-reading', after: '24 h', pressure: '300 psig', temperature: '75 °F' },
  { kind: 'weighing-gear', scaleStep: '5 g', hoseLength: '2 m' },
  { kind: 'supply-measured', voltages: ['231 V'], nominal: '230 V' },
  {
    kind: 'cylinder-weighed',
    cylinder: 'C1',
    refrigerant: 'R-410A',
    holds: 'new',
    refillable: false,
    tare: '5 lb',
    waterCapacity: '26 lb',
    gross: '25 lb',
  },
)

describe('the service record in Spanish', async () => {
  const language = { tag: 'es', words: await wordsOf('es') }
  const record = ({ visit, assessment }: Example, preference: UnitPreference) =>
    serviceRecord(visit, assessment, { preference, created: '2026-07-01T12:00:00Z', language })

  test.each([...EXAMPLES, everything].map((each) => [each.name, each] as const))(
    '[property] %s: paper and pictures hold no English but what was typed, and what is cited',
    (_, each) => {
      for (const preference of [INCH_POUND, METRIC]) {
        const { content } = record(each, preference)
        const texts = (field: string) =>
          [...JSON.stringify(content).matchAll(new RegExp(`"${field}":("(?:[^"\\\\]|\\\\.)*")`, 'g'))].map(
            ([, text = '""']): string => JSON.parse(text),
          )
        const labels = texts('svg').flatMap((svg) => [...svg.matchAll(/>([^<>]+)</g)].map(([, words]) => words))
        const written = texts('text').filter((words) => !words.startsWith('[1]'))
        expect(written.length).toBeGreaterThan(5)
        const shown = [...labels, ...written].join('\n')
        expect(english(shown, each)).toEqual([])
      }
    },
  )

  test('[property] its file is in Spanish, read back with its accents', async () => {
    const bytes = await renderPdf(record(everything, METRIC))
    expect(Buffer.from(bytes).toString('latin1')).toContain('/Lang (es)')
    const printed = pdfText(bytes).join(' ')
    expect(english(printed.split('Fuentes')[0] ?? '', everything)).toEqual([])
    const letters = printed.replace(/\s/g, '')
    for (const said of [
      'Técnico',
      'Condiciones del método',
      'Presión de succión',
      'Calculado a partir de ellas',
      '1 de 3',
    ])
      expect(letters).toContain(said.replace(/\s/g, ''))
  })
})
