import { inEnglish, METRIC, teller } from '@chargewright/quantity'
import fc from 'fast-check'
import { expect, test } from 'vitest'
import regular from '../../font/AtkinsonHyperlegibleNext-Regular.json' with { type: 'json' }
import { printable, shortened } from './printable.ts'

test('[property] the signs that a record needs are in the font', () => {
  const signs = '→ ← − ± ° ≠ ≤ ≥ ≈ … · × ½ ¼ ¾ ³ ² “ ” ’ – — é ñ ß ğ ł š'
  expect(printable(signs)).toBe(signs)
})

test('[limit] what the font lacks becomes its plain form, or a question mark that can be seen', () => {
  expect(printable('ﬁn ℃ 漢字 😀\u202e')).toBe('fin °C ?? ??')
  expect(printable('a\n\tb')).toBe('a  b')
  expect(printable('e\u0301')).toBe('é')
})

test('[property] nothing that the font lacks, and no run that has no place to break, comes through', () => {
  const covered = new Set(regular.characters)
  fc.assert(
    fc.property(fc.string({ unit: 'grapheme', maxLength: 300 }), (typed) => {
      const out = printable(typed)
      expect([...out].filter((char) => !covered.has(char))).toEqual([])
      expect(out).not.toMatch(/\S{41}/)
    }),
    { seed: 5, numRuns: 500 },
  )
  expect(printable('x'.repeat(100))).toBe(`${'x'.repeat(40)} ${'x'.repeat(40)} ${'x'.repeat(20)}`)
})

test('[property] a shortened text says so; a short one stays', () => {
  const tell = teller(METRIC, inEnglish)
  expect(shortened('abc', tell, 3)).toBe('abc')
  expect(shortened('abcd', tell, 3)).toBe('abc… (whole text in the data export)')
})
