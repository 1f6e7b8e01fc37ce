import { quantity } from '@chargewright/quantity'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { againstBand, againstLimit } from './compare.ts'

const K = (si: number, u?: number) => quantity('temperature difference', si, u)

describe('against a band', () => {
  test.each([
    ['well inside', K(0, 1), 'inside'],
    ['well above', K(7, 1), 'above'],
    ['well below', K(-7, 1), 'below'],
    ['just above, inside its uncertainty', K(5.5, 1), 'too-close'],
    ['just inside, inside its uncertainty', K(4.5, 1), 'too-close'],
    ['exact and on the edge', K(5), 'inside'],
    ['as uncertain as the band is wide', K(0, 5), 'too-close'],
    ['not a number', K(Number.NaN, 1), 'too-close'],
  ] as const)('[limit] %s', (_, value, side) => {
    expect(againstBand(value, -5, 5)).toBe(side)
  })

  test('[property] a larger uncertainty never makes an answer clearer', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -20, max: 20, noNaN: true }),
        fc.double({ min: 0, max: 5, noNaN: true }),
        (value, u) => {
          const narrow = againstBand(K(value, u), -5, 5)
          const wide = againstBand(K(value, u * 2 + 0.1), -5, 5)
          expect([narrow, 'too-close']).toContain(wide)
        },
      ),
    )
  })
})

test.each([
  [K(3.5, 1), 'above'],
  [K(0.5, 1), 'below'],
  [K(2.5, 1), 'too-close'],
  [K(2), 'too-close'],
  [K(Number.NaN), 'too-close'],
] as const)('[limit] %o against a limit of 2 is %s', (value, side) => {
  expect(againstLimit(value, K(2))).toBe(side)
})
