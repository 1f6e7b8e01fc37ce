import { INCH_POUND, METRIC } from '@chargewright/quantity'
import { describe, expect, test } from 'vitest'
import { preferences } from './preference.ts'

describe('the preferences of a device', () => {
  test('[property] a choice is there again at the next start', () => {
    const kept = new Map<string, string>()
    const shelf = {
      getItem: (key: string) => kept.get(key) ?? null,
      setItem: (key: string, value: string) => void kept.set(key, value),
    }
    const first = preferences(() => shelf)
    expect(first.units.value).toBe(INCH_POUND)
    first.turnUnits()
    first.turnTheme()
    first.turnLanguage()
    first.chooseUnit('mass', 'kg')
    first.setInstrument('voltmeter', { accuracy: '1 V' })
    const next = preferences(() => shelf)
    expect(next.language.value).toBe('es')
    expect(next.units.value).toEqual({ ...METRIC, mass: 'kg' })
    expect(next.instruments.value).toEqual({ voltmeter: { accuracy: '1 V' } })
    next.turnUnits()
    expect(next.units.value).toBe(INCH_POUND)
    next.setInstrument('voltmeter', undefined)
    expect(preferences(() => shelf).instruments.value).toEqual({})
    expect(next.theme.value).toBe('dim')
  })

  test('[limit] a browser that refuses to keep it, or kept nonsense, costs no more than the preference', () => {
    const refused = preferences(() => {
      throw new DOMException('denied', 'SecurityError')
    })
    refused.turnUnits()
    expect(refused.unitSystem.value).toBe('metric')
    const nonsense = preferences(() => ({ getItem: () => 'furlongs', setItem: () => {} }))
    expect(nonsense.unitSystem.value).toBe('inch-pound')
  })

  test.each([
    ['es-MX', 'es'],
    ['en-US', 'en'],
    ['de', 'en'],
  ])('[property] a device that speaks %s begins in %s', (spoken, language) => {
    const shelf = { getItem: () => null, setItem: () => undefined }
    expect(preferences(() => shelf, spoken).language.value).toBe(language)
  })
})
