import { expect, test } from 'vitest'
import { sourceInWords } from './source-in-words.ts'
import { inEnglish } from './translate.ts'

const SPANISH: Readonly<Record<string, string>> = {
  'common practice': 'práctica habitual',
  'law, local law first': 'ley, primero la local',
  recalled: 'de memoria',
  'equation of state of {0}': 'ecuación de estado de {0}',
}
const spanish = (text: string) => SPANISH[text] ?? text

test.each([
  ['law, local law first', 'ley, primero la local'],
  ['NEMA MG-1, common practice', 'NEMA MG-1, práctica habitual'],
  ['NEMA MG-1; common practice (recalled)', 'NEMA MG-1; práctica habitual (de memoria)'],
  ['equation of state of R-410A', 'ecuación de estado de R-410A'],
  ['equation of state of ', 'equation of state of '],
  ['Kim, Yoon 2008', 'Kim, Yoon 2008'],
  ['', ''],
])('[property] of “%s” our own words are looked up, whole or in part', (source, said) => {
  expect(sourceInWords(source, spanish)).toBe(said)
  expect(sourceInWords(source, inEnglish)).toBe(source)
})
