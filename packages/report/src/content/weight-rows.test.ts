import { inEnglish, METRIC, teller } from '@chargewright/quantity'
import type { Fact } from '@chargewright/visit'
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { example, visitOf } from '../../../../examples/example-visits.ts'
import { cylinderRows, moveRows } from './weight-rows.ts'

const tell = teller(METRIC, inEnglish)

test('[property] the weighed steps of an example, with their sum', () => {
  const { visit } = example('step-by-step')
  const OZ = 0.45359237 / 16
  const rows = moveRows(visit, METRIC, tell)
  expect(rows.map(({ direction, typed, cylinder }) => [direction, typed, cylinder])).toEqual([
    ['in', '5 oz', 'demo cylinder 7'],
    ['in', '6 oz', 'demo cylinder 7'],
  ])
  expect(rows.at(-1)!.net.si).toBeCloseTo(11 * OZ, 12)
  expect(cylinderRows(visit, METRIC, tell)).toMatchObject([
    { cylinder: 'demo cylinder 7', refrigerant: 'R-410A', took: { si: 0 } },
  ])
})

test('[property] what the cylinders gave less what they took is what went into the system, in any order', () => {
  const move = fc.record({
    kind: fc.constant('refrigerant-moved' as const),
    direction: fc.constantFrom('into-system' as const, 'out-of-system' as const),
    mass: fc.integer({ min: 1, max: 5000 }).map((grams) => `${grams} g`),
    phase: fc.constant('vapour' as const),
    port: fc.constant('suction' as const),
    compressor: fc.constant('running' as const),
    cylinder: fc.constantFrom('a', 'b', '["a"]'),
  })
  fc.assert(
    fc.property(fc.array(move, { minLength: 1, maxLength: 30 }), (moves: readonly Fact[]) => {
      const { visit } = visitOf(...moves)
      const balance = cylinderRows(visit, METRIC, tell).reduce((sum, { gave, took }) => sum + gave.si - took.si, 0)
      expect(balance).toBeCloseTo(moveRows(visit, METRIC, tell).at(-1)!.net.si, 9)
    }),
    { seed: 2, numRuns: 100 },
  )
})

test('[property] one refrigerant in one cylinder is one line, however it was typed', () => {
  const move = {
    direction: 'into-system',
    mass: '1 lb',
    phase: 'vapour',
    port: 'suction',
    compressor: 'running',
  } as const
  const moves = ['410a', 'R-410A'].map((refrigerant): Fact => ({ kind: 'refrigerant-moved', ...move, refrigerant }))
  const { visit } = visitOf(...moves)
  expect(moveRows(visit, METRIC, tell).map(({ refrigerant }) => refrigerant)).toEqual(['R-410A', 'R-410A'])
  expect(cylinderRows(visit, METRIC, tell).map(({ refrigerant }) => refrigerant)).toEqual(['R-410A'])
})
