import { INCH_POUND, METRIC } from '@chargewright/quantity'
import { expect, test } from 'vitest'
import { understand } from './understand.ts'
import { unitsLike } from './units-like.ts'

const mass = { label: 'Mass', accepts: ['mass'] } as const
const inPlaceOf = (before: string | undefined, typed: string, units = INCH_POUND) => {
  const read = understand(typed, mass, unitsLike(before, mass.accepts, units))
  return read.ok && read.value.text
}

test('[property] a bare number in the place of a value has the unit of that value', () => {
  expect(inPlaceOf('1500 g', '150')).toBe('150 g')
  expect(inPlaceOf('1,5 kg', '2', METRIC)).toBe('2 kg')
  expect(inPlaceOf('1500 g', '6 oz')).toBe('6 oz')
  expect(unitsLike('20 inHg vac', ['gauge pressure', 'absolute pressure'], METRIC)['gauge pressure']).toBe('inHg vac')
})

test('[limit] two units, none and no text at all leave the units of the page', () => {
  for (const before of ['9 lb 6 oz', '150', 'pasta', '', undefined])
    expect(unitsLike(before, ['mass'], METRIC)).toBe(METRIC)
  expect(unitsLike('111 oz', ['mass'], INCH_POUND)).toBe(INCH_POUND)
  expect(unitsLike('1500 g', [], INCH_POUND)).toBe(INCH_POUND)
})
