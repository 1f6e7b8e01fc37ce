import { INCH_POUND, METRIC, quantity, render, say } from '@chargewright/quantity'
import { expect, test } from 'vitest'
import { inWords, quantityInWords } from './in-words.ts'

const superheat = { ...quantity('temperature difference', 15), u: 0.5 }
const mass = quantity('mass', 2.94835)
const inner = say`${superheat} of superheat`
const sentence = say`Add ${mass} to R-410A for ${inner}, ${2} times`

test('[property] only the words may part at the end of a line: numbers keep their ± and their unit', () => {
  expect(inWords(sentence, INCH_POUND).split(' ')).toEqual([
    'Add',
    '6\u00a0lb\u00a08\u00a0oz',
    'to',
    'R-410A',
    'for',
    '27.0\u00a0±\u00a01.8\u00a0°F',
    'of',
    'superheat,',
    '2',
    'times',
  ])
})

test('[property] it says what the engine says, in both unit systems', () => {
  for (const units of [INCH_POUND, METRIC]) {
    expect(inWords(sentence, units).replaceAll('\u00a0', ' ')).toBe(render(sentence, units))
  }
})

test('[property] a unit that is a phrase may part within', () => {
  const airflow = quantity('specific airflow', 5.36783e-5)
  expect(quantityInWords(airflow, INCH_POUND).split(' ')).toEqual(['400\u00a0CFM', 'per\u00a0ton'])
})
