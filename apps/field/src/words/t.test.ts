import { METRIC, quantity, say } from '@chargewright/quantity'
import { afterEach, expect, test } from 'vitest'
import { inWords } from '../session/in-words.ts'
import { problemInWords } from './problem-in-words.ts'
import { sourceInWords } from './source-in-words.ts'
import { speak } from './speak.ts'
import { catalogue, t } from './t.ts'

const page = { lang: '' }
afterEach(() => speak('en', page))

test('[property] the page says its language, and looks up texts, labels and statements in it', async () => {
  await speak('es', page)
  expect(page.lang).toBe('es')
  expect(t('Suction pressure')).toBe('Presión de succión')
  expect(inWords(say`Add ${quantity('mass', 0.2)}, as vapour, at ${'the suction service port'}`, METRIC)).toBe(
    'Agregue 200\u00a0g, como vapor, por el puerto de servicio de succión',
  )
  const problem = { kind: 'unreadable', field: 'Suction line', value: 'warm', accepted: 'a temperature' } as const
  expect(problemInWords(problem)).toBe('Línea de succión: no se puede leer “warm”; se espera una temperatura')
  await speak('en', page)
  expect(page.lang).toBe('en')
  expect(t('Suction pressure')).toBe('Suction pressure')
})

test('[property] a text that begins a sentence finds the entry of the same text within one', () => {
  catalogue.value = { 'fixed orifice': 'orificio fijo' }
  expect(t('Fixed orifice')).toBe('Orificio fijo')
})

test('[property] values stand in the places of the translation, in its order', () => {
  catalogue.value = { '{0} of {1} hold': 'de {1} se cumplen {0}' }
  expect(t('{0} of {1} hold', 2, 3)).toBe('de 3 se cumplen 2')
})

test.each(['toString', 'constructor', '__proto__', 'Clinic roof, unit 2', ''])(
  '[limit] what has no entry comes back as it is: “%s”',
  (text) => {
    catalogue.value = { 'fixed orifice': 'orificio fijo' }
    expect(t(text)).toBe(text)
  },
)

test('[limit] of two choices in a row the last one holds', async () => {
  await Promise.all([speak('es', page), speak('en', page)])
  expect(page.lang).toBe('en')
  expect(t('Suction pressure')).toBe('Suction pressure')
})

test('[property] of a citation our own words are looked up, whole or in part', () => {
  catalogue.value = { 'common practice': 'práctica habitual', 'law, local law first': 'ley, primero la local' }
  expect(sourceInWords('NEMA MG-1, common practice')).toBe('NEMA MG-1, práctica habitual')
  expect(sourceInWords('law, local law first')).toBe('ley, primero la local')
})
