import { describe, expect, test } from 'vitest'
import { placeToType, turnSign, withUnit } from './with-unit.ts'

describe('unit keys', () => {
  test('[property] a unit follows the last number', () => {
    expect(withUnit('118', 'psig')).toBe('118 psig ')
    expect(withUnit('14 lb 6', 'oz')).toBe('14 lb 6 oz ')
    expect(withUnit('6 ¼', 'oz')).toBe('6 ¼ oz ')
  })

  test('[property] a second unit takes the place of the first', () => {
    expect(withUnit('118 psig ', 'bar g')).toBe('118 bar g ')
    expect(withUnit('14 lb 6 oz', 'g')).toBe('14 lb 6 g ')
  })

  test('[property] without a number the unit stands there for the one that comes, and digits go before it', () => {
    expect(withUnit('', 'psig')).toBe(' psig')
    expect(withUnit(' psig', 'bar g')).toBe(' bar g')
    expect(withUnit('-', 'bar g')).toBe('- bar g')
    expect(placeToType(' bar g')).toBe(0)
    expect(placeToType('- bar g')).toBe(1)
    expect(placeToType('-')).toBe(1)
    expect(placeToType('118 bar g ')).toBe(10)
  })
})

describe('sign key', () => {
  test('[property] pressed twice it changes nothing', () => {
    for (const text of ['', '3', '-3 °C', '−3', ' bar g', '- bar g']) {
      expect(turnSign(turnSign(text)).replace('−', '-')).toBe(text.replace('−', '-'))
    }
    expect(turnSign('3 °C')).toBe('-3 °C')
  })
})
