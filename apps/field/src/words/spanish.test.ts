import { FINDINGS, METHODS } from '@chargewright/charging'
import { RATING_WORDS, SUPPLY_WORDS } from '@chargewright/compressor'
import { type Catalogue, holdsPlaces } from '@chargewright/quantity'
import { SPANISH_AREAS } from '@chargewright/report'
import {
  APPLICATIONS,
  FIGURE_IDS,
  figureKind,
  INSTRUMENT_IDS,
  instrumentSort,
  METERING_DEVICES,
  OBSERVATION_IDS,
  observationKind,
  READING_IDS,
  readingKind,
  STATIONS,
} from '@chargewright/visit'
import { describe, expect, test } from 'vitest'
import { GLOSSARY } from './es/glossary.ts'
import { AREAS, SPANISH } from './es/spanish.ts'
import { sourceTexts } from './source-texts.ts'

const app = sourceTexts('apps/field/src')
const packages = sourceTexts('packages')
const all = [...packages, ...app]

/** A text that begins a sentence shares the entry of the same text within one. */
const inside = (text: string) => text.charAt(0).toLowerCase() + text.slice(1)
const hasEntry = (text: string, catalogue = SPANISH) =>
  Object.hasOwn(catalogue, text) || Object.hasOwn(catalogue, inside(text))
/** What another app has too. */
const OF_PACKAGES: Catalogue = Object.assign({}, ...SPANISH_AREAS)

/** Signs, units, numbers and bare places for values read the same in every language. */
const isWorded = (text: string) => /\p{L}{2}/u.test(text.replace(/\{\d+\}/g, ''))

/** Two words, or one that begins large: a class, a key or a mark of the program is neither. */
const READS_AS_WORDS = /\p{L}{2,},? [\p{L}\d(]|^\p{Lu}\p{Ll}{2,}/u

/** Classes, selectors, keys of a keyboard, errors, units and samples of files, which are written like words. */
const NOT_FOR_PEOPLE = new RegExp(
  [
    '\\n',
    '^[a-z-]+( [a-z]*-[a-z-{}0-9]+)+$',
    '^(kept trouble|form trace|group [a-z]+|input, textarea|Escape|Enter|Arrow.*|Chargewright(, .*)?|Atkinson .*|Notification|.*Error|No engine: .*)$',
    '^(inHg vac|lb oz|CFM per ton|m³/h per kW|Btu/h|Pa [ag]|English)$',
  ].join('|'),
)

const tables = {
  compressor: Object.values(RATING_WORDS),
  supply: Object.values(SUPPLY_WORDS),
  readings: READING_IDS.map(readingKind).flatMap(({ label, tells, howTo }) => [label, tells, howTo ?? '']),
  stations: STATIONS.map(({ label }) => label),
  observations: OBSERVATION_IDS.map(observationKind).flatMap(({ label, answers, tells }) => [
    label,
    tells,
    ...Object.values(answers),
  ]),
  figures: FIGURE_IDS.map(figureKind).map(({ label }) => label),
  instruments: INSTRUMENT_IDS.map(instrumentSort).map(({ label }) => label),
  devices: Object.values(METERING_DEVICES),
  applications: Object.values(APPLICATIONS),
  methods: Object.values(METHODS),
  findings: Object.values(FINDINGS),
}

describe('the Spanish catalogue', () => {
  test('[property] has an entry for every statement of the packages and the app', () => {
    const said = all.flatMap((source) => source.said)
    expect(said.length).toBeGreaterThan(400)
    expect(said.filter((text) => isWorded(text) && !hasEntry(text))).toEqual([])
  })

  test('[property] has every statement of the packages in the areas that every app can use', () => {
    const said = packages.flatMap((source) => source.said)
    expect(said.length).toBeGreaterThan(400)
    expect(said.filter((text) => isWorded(text) && !hasEntry(text, OF_PACKAGES))).toEqual([])
  })

  test.each(Object.entries(tables))('[property] has an entry for every label of the %s', (_, labels) => {
    expect(labels.length).toBeGreaterThan(2)
    expect(labels.filter((text) => isWorded(text) && !hasEntry(text, OF_PACKAGES))).toEqual([])
  })

  test('[property] has an entry for every text that the app looks up', () => {
    const told = app.flatMap((source) => source.told)
    expect(told.length).toBeGreaterThan(300)
    expect(told.filter((text) => isWorded(text) && !hasEntry(text))).toEqual([])
  })

  test('[property] has an entry for every text that a table of the app holds', () => {
    const written = app.filter(({ file }) => !/\/words\//.test(file)).flatMap((source) => source.written)
    const texts = written.filter((text) => READS_AS_WORDS.test(text) && !NOT_FOR_PEOPLE.test(text))
    expect(texts.length).toBeGreaterThan(200)
    expect([...new Set(texts.filter((text) => !hasEntry(text)))]).toEqual([])
  })

  test('[property] has an entry for every text that record and pictures hold beside their statements', () => {
    const sources = [...sourceTexts('packages/report'), ...sourceTexts('packages/picture')]
    expect(sources.length).toBeGreaterThan(40)
    const texts = sources
      // Its columns and sections are the same in every language.
      .filter(({ file }) => !file.endsWith('record-csv.ts'))
      .flatMap(({ written }) => written)
      .filter((text) => READS_AS_WORDS.test(text) && !NOT_FOR_PEOPLE.test(text))
    expect([...new Set(texts.filter((text) => !hasEntry(text, OF_PACKAGES)))]).toEqual([])
  })

  test('[property] has no entry for a text that no source has any more', () => {
    const texts = all.flatMap(({ said, told, written }) => [...said, ...told, ...written])
    // What a limit rests on is looked up in its pieces, too.
    const alive = new Set(texts.flatMap((text) => [text, ...text.split(/[;,] |(?=\{)/)]))
    const insides = new Set([...alive].map(inside))
    expect(Object.keys(SPANISH).filter((text) => !alive.has(text) && !insides.has(text))).toEqual([])
  })

  test('[property] has the places for values of the English text in every entry', () => {
    expect(Object.entries(SPANISH).filter(([english, spanish]) => !holdsPlaces(english, spanish))).toEqual([])
  })

  test('[property] says each text once, in one area', () => {
    const texts = AREAS.flatMap((area) => Object.keys(area))
    expect(texts.filter((text, i) => texts.indexOf(text) !== i)).toEqual([])
  })

  test.each(Object.entries(GLOSSARY))('[property] always says “%s” as “%s”', (english, spanish) => {
    const word = new RegExp(`\\b${english}\\b`, 'i')
    const entries = Object.entries(SPANISH).filter(([text]) => word.test(text))
    expect(entries.length).toBeGreaterThan(1)
    const said = new RegExp(spanish, 'i')
    expect(entries.filter(([, text]) => !said.test(text))).toEqual([])
  })
})

test.each(app.filter(({ file }) => file.endsWith('.tsx')).map(({ file, bare }) => [file, bare] as const))(
  '[property] %s draws no text that is not looked up',
  (_, bare) => {
    expect(bare).toEqual([])
  },
)
