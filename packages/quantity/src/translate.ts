import { textInWords } from './made-text.ts'
import type { UnitPreference } from './preference.ts'
import { render, type Statement } from './statement.ts'

/** What an English text is called in another language; the text itself where that language has no entry for it. */
export type Words = (english: string) => string

/** English is the key of every other language, so it needs no entries. */
export const inEnglish: Words = (english) => english

/** Says a statement to one reader. */
export type Tell = (statement: Statement) => string

/** Says statements in the units and the language of one reader. */
export const teller =
  (preference: UnitPreference, words: Words): Tell =>
  (statement) =>
    render(translated(statement, words), preference, words)

/**
 * The same statement in another language: its template, those of the statements within it, and the plain texts among
 * its values (labels, names of ports) are looked up. Numbers, quantities and what is verbatim are left as they are.
 */
export function translated(statement: Statement, words: Words): Statement {
  return { template: words(statement.template), values: statement.values.map((value) => translatedValue(value, words)) }
}

function translatedValue(value: Statement['values'][number], words: Words): Statement['values'][number] {
  if (typeof value === 'string') return textInWords(value, words)
  return typeof value === 'object' && 'template' in value ? translated(value, words) : value
}

/** Whether a translation has the same places for values as the English text: each at least once, in any order. */
export function holdsPlaces(english: string, translation: string): boolean {
  const [asked, held] = [places(english), places(translation)]
  return asked.size === held.size && [...asked].every((place) => held.has(place))
}

const places = (text: string): ReadonlySet<string> => new Set(text.match(/\{\d+\}/g))
