import { expect, test } from 'vitest'
import { textInWords } from './made-text.ts'
import { parse } from './parse.ts'
import { METRIC } from './preference.ts'
import { problemStatement } from './problem.ts'
import { inEnglish, teller } from './translate.ts'

const SPANISH: Readonly<Record<string, string>> = {
  'a number with a unit: {0}': 'un número con unidad: {0}',
  'movement {0}, cylinder': 'cilindro del movimiento {0}',
  '{0}: cannot read “{1}”; expected {2}': '{0}: no se puede leer “{1}”; se espera {2}',
}
const spanish = (text: string) => SPANISH[text] ?? text

test('[property] what a reading should have been is said in the language of the reader, with the same units', () => {
  const read = parse('pasta', 'temperature', { field: 'T' })
  const problem = !read.ok && problemStatement(read.error)
  expect(problem && teller(METRIC, spanish)(problem)).toBe(
    'T: no se puede leer “pasta”; se espera un número con unidad: °F, °C, K',
  )
})

test.each([
  ['movement v/$& 7, cylinder', 'cilindro del movimiento v/$& 7'],
  ['movement , cylinder', 'movement , cylinder'],
  ['some other text', 'some other text'],
])('[limit] “%s” is “%s”', (text, said) => {
  expect(textInWords(text, spanish)).toBe(said)
  expect(textInWords(text, inEnglish)).toBe(text)
})
