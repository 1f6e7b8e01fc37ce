import fc from 'fast-check'
import { expect, test } from 'vitest'
import { METRIC } from './preference.ts'
import { quantity } from './quantity.ts'
import { render, type Statement, say, verbatim } from './statement.ts'
import { holdsPlaces, inEnglish, teller, translated } from './translate.ts'

const anyStatement = fc.letrec<{ value: Statement['values'][number]; statement: Statement }>((tie) => ({
  value: fc.oneof(
    { depthSize: 'small' },
    fc.string(),
    fc.string().map(verbatim),
    fc.integer(),
    fc.double({ min: -40, max: 140, noNaN: true }).map((K) => quantity('temperature difference', K, 0.5)),
    tie('statement'),
  ),
  statement: fc
    .tuple(fc.string(), fc.array(tie('value'), { maxLength: 3 }))
    .map(([text, values]) => ({ template: [text, ...values.map((_, i) => `{${i}}`)].join(' '), values })),
})).statement

test('[property] words that change nothing leave a statement as it was', () => {
  fc.assert(
    fc.property(anyStatement, (statement) => {
      expect(translated(statement, (text) => text)).toEqual(statement)
    }),
    { seed: 7 },
  )
})

test('[property] every text of a statement is asked for, at any depth, and nothing else is', () => {
  fc.assert(
    fc.property(anyStatement, (statement) => {
      const asked: string[] = []
      translated(statement, (text) => {
        asked.push(text)
        return text
      })
      expect(asked).toEqual(textsOf(statement))
    }),
    { seed: 7 },
  )
})

const textsOf = ({ template, values }: Statement): string[] => [
  template,
  ...values.flatMap((value) => {
    if (typeof value === 'string') return [value]
    return typeof value === 'object' && 'template' in value ? textsOf(value) : []
  }),
]

const SPANISH: Readonly<Record<string, string>> = {
  '{0} without receiver: superheat {1}': 'sobrecalentamiento {1}: {0} sin recibidor',
  'fixed orifice': 'orificio fijo',
  'is {0}': 'de {0}',
}

test('[property] template, label and statement within it are in the other language, quantities in the reader’s units', () => {
  const english = say`${'fixed orifice'} without receiver: superheat ${say`is ${quantity('temperature difference', 5)}`}`
  const spanish = translated(english, (text) => SPANISH[text] ?? text)
  expect(render(spanish, METRIC)).toBe('sobrecalentamiento de 5.0 K: orificio fijo sin recibidor')
})

test('[property] what is verbatim is never looked up, also where it reads like an entry', () => {
  const note = say`${verbatim('fixed orifice')}: ${'fixed orifice'}`
  const spanish = (text: string) => SPANISH[text] ?? text
  expect(teller(METRIC, spanish)(note)).toBe('fixed orifice: orificio fijo')
  expect(teller(METRIC, inEnglish)(note)).toBe(render(note, METRIC))
})

test.each([
  ['add {0}, as vapour, at {1}', 'en {1} agregue {0}, como vapor', true],
  ['{0} over {0}', '{0} sobre {0}', true],
  ['nothing', 'nada', true],
  ['add {0}', 'agregue', false],
  ['add', 'agregue {0}', false],
  ['{0} to {1}', '{0} a {2}', false],
])('[limit] “%s” against “%s” holds its places: %s', (english, translation, holds) => {
  expect(holdsPlaces(english, translation)).toBe(holds)
})

test('[property] a unit that holds a word is said in the words of the reader', () => {
  const spanish = (english: string) => (english === 'm³/h per kW' ? 'm³/h por kW' : english)
  const tell = teller(METRIC, spanish)
  expect(tell(say`Airflow: ${say`${quantity('specific airflow', 0.05 / 1000)}`}`)).toBe('Airflow: 180 m³/h por kW')
})
