import { findRefrigerant } from '@chargewright/refrigerant'
import { expect, test } from 'vitest'
import { nearNames, withNearNames } from './near-names.ts'

const NAMES = ['R-32', 'R-134a', 'R-404A', 'R-407A', 'R-407C', 'R-410A', 'R-454B', 'R-1234ze(E)']

test.each([
  ['R-410', 'R-410A'],
  ['r 401a', 'R-404A'],
  ['R454', 'R-454B'],
  ['1234ze', 'R-1234ze(E)'],
  ['R-134', 'R-134a'],
])('[property] %s is near %s', (typed, near) => {
  expect(nearNames(typed, NAMES)).toContain(near)
})

test('[limit] nothing is near a word or a hostile text', () => {
  expect(nearNames('freezing-stuff', NAMES)).toEqual([])
  expect(nearNames('9'.repeat(1e6), NAMES)).toEqual([])
})

test('[limit] the problem quotes a hostile name in part and points at the list', () => {
  const found = withNearNames(findRefrigerant('9'.repeat(1e6)))
  if (found.ok || found.error.kind === 'out-of-range') throw new Error('not refused')
  expect(found.error.value.length).toBeLessThan(100)
  expect(found.error.accepted).toContain('chargewright list')
})
