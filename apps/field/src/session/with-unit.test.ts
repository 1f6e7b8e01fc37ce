import { describe, expect, test } from 'vitest'
import { turnSign, withUnit } from './with-unit.ts'

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

  test('[limit] without a number there is nothing to give a unit to', () => {
    expect(withUnit('', 'psig')).toBe('')
    expect(withUnit('psig', 'bar g')).toBe('psig')
  })
})

describe('sign key', () => {
  test('[property] pressed twice it changes nothing', () => {
    for (const text of ['', '3', '-3 °C', '−3']) {
      expect(turnSign(turnSign(text)).replace('−', '-')).toBe(text.replace('−', '-'))
    }
    expect(turnSign('3 °C')).toBe('-3 °C')
  })
})
