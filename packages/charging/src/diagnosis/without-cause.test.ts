import type { Diagnosis } from '@chargewright/diagnosis'
import { expect, test } from 'vitest'
import { withoutCause } from './without-cause.ts'

const none = { mean: 0, sd: 0.1 }
const diagnosis = {
  singles: [
    { cause: 'low-indoor-air', probability: 0.5, severity: none, charge: none },
    { cause: 'sound', probability: 0.3, severity: none, charge: none },
    { cause: 'short-of-charge', probability: 0.2, severity: none, charge: none },
  ],
  pairs: [
    { causes: ['low-indoor-air', 'short-of-charge'], probability: 0.75, severities: [0.3, -0.2], charge: none },
    { causes: ['weak-compressor', 'short-of-charge'], probability: 0.25, severities: [0.3, -0.2], charge: none },
  ],
  pairShare: 0.4,
} as unknown as Diagnosis

test('[property] what is left sums to one and keeps its proportions', () => {
  const { singles, pairs, pairShare } = withoutCause(diagnosis, 'low-indoor-air')
  expect(singles.map(({ probability }) => probability)).toEqual([0.6, 0.4])
  expect(pairs.map(({ probability }) => probability)).toEqual([1])
  // 0.4 × 0.25 of the pairs against 0.6 × 0.5 of the singles.
  expect(pairShare).toBeCloseTo(0.25, 12)
})

test('[limit] no pair is left where every pair had it', () => {
  expect(withoutCause(diagnosis, 'short-of-charge')).toMatchObject({ pairs: [], pairShare: 0 })
})
