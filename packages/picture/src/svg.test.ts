import fc from 'fast-check'
import { expect, test } from 'vitest'
import { element, escapeXml, group, pathThrough } from './svg.ts'

test('[property] whatever was typed, escaped text holds no sign that XML would take for its own', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'binary', maxLength: 60 }), (typed) => {
      const escaped = escapeXml(typed)
      expect(escaped).not.toMatch(/[<>"']/)
      expect(escaped.replace(/&#\d+;/g, '')).not.toContain('&')
    }),
    { seed: 7, numRuns: 500 },
  )
})

test('[limit] controls and lone surrogates are left out, everything else stays', () => {
  expect(escapeXml('a\u0000b\u001fc\ud800d\ufffe')).toBe('abcd')
  expect(escapeXml('95 °F → 漢字 😀\t')).toBe('95 °F → 漢字 😀\t')
  expect(escapeXml('<&>')).toBe('&#60;&#38;&#62;')
})

test('[property] numbers are rounded to a hundredth, without a negative zero, and absent attributes are left out', () => {
  expect(element('line', { x1: 1 / 3, y1: -0.0001, class: undefined })).toBe('<line x1="0.33" y1="0"/>')
  expect(
    pathThrough(
      [
        { x: 0, y: 1.001 },
        { x: 2, y: 10 / 3 },
      ],
      true,
    ),
  ).toBe('M0,1L2,3.33Z')
})

test('[limit] a group of nothing is nothing', () => {
  expect(group({ stroke: 'red' }, '', '')).toBe('')
})
