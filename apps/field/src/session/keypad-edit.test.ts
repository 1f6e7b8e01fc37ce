import { INCH_POUND, METRIC } from '@chargewright/quantity'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { erased, type Marked, pressed } from './keypad-edit.ts'
import { understand } from './understand.ts'
import { isUnitAlone, unitKey } from './unit-key.ts'
import { placeToType } from './with-unit.ts'

const at = (text: string): Marked => ({ text, start: text.length, end: text.length })
const all = (text: string): Marked => ({ text, start: 0, end: text.length })
const type = (keys: string, from: Marked = at('')) => [...keys].reduce(pressed, from).text

describe('the keys of the keypad', () => {
  test('[property] the unit key goes round all units before a number is typed, and the number then has that unit', () => {
    let text = ''
    const shown: string[] = []
    for (let i = 0; i < 4; i++) {
      text = unitKey(text, 'gauge pressure', INCH_POUND).press()
      shown.push(unitKey(text, 'gauge pressure', INCH_POUND).now.symbol)
    }
    expect(new Set(shown).size).toBe(4)
    const start = placeToType(text)
    const typed = pressed({ text, start, end: start }, '7')
    expect(typed.start).toBe(1)
    expect(typed.text).toBe(`7 ${shown.at(-1)}`)
  })

  test('[limit] a unit alone is nothing yet; a word that is no unit, and a number, are something', () => {
    expect(['', ' ', ' psig', '- bar g', 'psig'].map((text) => isUnitAlone(text, 'gauge pressure'))).toEqual([
      false,
      false,
      true,
      true,
      true,
    ])
    expect(['pasta', '7 psig', '7', '°F'].some((text) => isUnitAlone(text, 'gauge pressure'))).toBe(false)
  })

  test('[property] any number can be typed, and taken back key by key', () => {
    fc.assert(
      fc.property(fc.stringMatching(/^\d{1,5}(\.\d{0,3})?$/), (number) => {
        const typed = [...number].reduce(pressed, at(''))
        expect(typed.text).toBe(number)
        expect([...number].reduce(erased, typed).text).toBe('')
      }),
      { seed: 4 },
    )
  })

  test('[property] the first key replaces what is marked, and backspace takes all of it', () => {
    expect(pressed(all('118 psig'), '7')).toEqual(at('7'))
    expect(erased(all('118 psig'))).toEqual(at(''))
  })

  test.each([
    ['72 psig', '72'],
    ['14 lb ', '14'],
    ['14 lb 6 oz', '14 lb 6'],
    ['14 lb 6', '14 lb '],
    ['-12 °C', '-12'],
    ['29.5 inHg vac', '29.5'],
    ['-', ''],
    ['', ''],
  ])('[property] backspace turns “%s” into “%s”: a unit goes as a whole', (text, left) => {
    expect(erased(at(text)).text).toBe(left)
  })

  test('[limit] a number gets one decimal point, the next number its own', () => {
    expect(type('1.2.5')).toBe('1.25')
    expect(type('6.5', at('1.5 lb '))).toBe('1.5 lb 6.5')
    expect(type('5', at('72 psig'))).toBe('72 psig 5')
  })

  test('[property] in the middle of a text a key works where the cursor stands', () => {
    expect(pressed({ text: '18', start: 1, end: 1 }, '1')).toEqual({ text: '118', start: 2, end: 2 })
  })
})

describe('the unit key', () => {
  test('[property] goes round all units of the dimension and comes back to the first', () => {
    let text = '72'
    const seen: string[] = []
    for (let i = 0; i < 5; i++) {
      text = unitKey(text, 'gauge pressure', INCH_POUND).press()
      seen.push(text.trim())
    }
    expect(seen).toEqual(['72 bar g', '72 kPa g', '72 MPa g', '72 inHg vac', '72 psig'])
    expect(unitKey('72', 'gauge pressure', INCH_POUND).now.symbol).toBe('psig')
    expect(unitKey('7', 'gauge pressure', METRIC).now.symbol).toBe('bar g')
  })

  test('[property] pounds are followed by ounces, typed or not', () => {
    const pounds = unitKey('14', 'mass', INCH_POUND).press()
    expect(pounds).toBe('14 lb ')
    const text = `${pounds}6`
    expect(unitKey(text, 'mass', INCH_POUND)).toMatchObject({ now: { symbol: 'oz' }, next: { symbol: 'oz' } })
    expect(unitKey(text, 'mass', METRIC).press()).toBe('14 lb 6 oz ')
    const mass = { label: 'Mass', accepts: ['mass'] } as const
    for (const units of [INCH_POUND, METRIC]) {
      expect(understand(text, mass, units)).toMatchObject({ ok: true, value: { text: '14 lb 6 oz' } })
    }
  })

  test('[limit] a unit that is not of the dimension does no harm, and what is no number makes way for a unit', () => {
    expect(unitKey('72 psia', 'gauge pressure', INCH_POUND).press()).toBe('72 bar g ')
    expect(unitKey('', 'mass', INCH_POUND).press()).toBe(' lb')
    expect(unitKey('pasta', 'mass', INCH_POUND).press()).toBe(' lb')
  })
})
