import { INCH_POUND, METRIC } from '@chargewright/quantity'
import { expect, test } from 'vitest'
import { describedBy, draftOf } from './instrument-draft.ts'
import { tryInstrument } from './try-instrument.ts'

const gauge = { ...draftOf(undefined), accuracy: ' 2 ', name: '2' }

test('[property] a bare number is kept with the unit in which the form read it, and a name as it is', () => {
  expect(describedBy(gauge, ['pressure difference'], INCH_POUND)).toEqual({ accuracy: '2 psi', name: '2' })
  expect(describedBy(gauge, ['pressure difference'], METRIC)).toEqual({ accuracy: '2 bar', name: '2' })
  expect(tryInstrument('low-side-gauge', describedBy(gauge, ['pressure difference'], INCH_POUND)).ok).toBe(true)
})

test('[limit] what cannot be read stays as it was typed, and a class is a number', () => {
  const draft = { ...gauge, accuracy: 'fine', class: '1,6', span: '500 psi' }
  const described = describedBy(draft, ['pressure difference'], METRIC)
  expect(described).toEqual({ name: '2', accuracy: 'fine', class: 1.6, span: '500 psi' })
})
