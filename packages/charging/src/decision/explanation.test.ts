import type { Diagnosis } from '@chargewright/diagnosis'
import { METRIC, render } from '@chargewright/quantity'
import { describe, expect, it } from 'vitest'
import { explanation } from './explanation.ts'

const charge = { mean: 0, sd: 0.02, low: -0.03, high: 0.03 }
const severity = { mean: 0, sd: 0.1 }
const TWO: Pick<Diagnosis, 'singles' | 'readings'> = {
  singles: [
    { cause: 'short-of-charge', probability: 0.9, severity, charge },
    { cause: 'liquid-line-restriction', probability: 0.1, severity, charge },
  ],
  readings: [
    {
      observable: 'supplyAirDrop',
      set: 0,
      read: 10,
      expected: { 'short-of-charge': { mean: 10, sd: 1 }, 'liquid-line-restriction': { mean: 10.1, sd: 1 } },
    },
    {
      observable: 'subcooling',
      set: 0,
      read: 2,
      expected: { 'short-of-charge': { mean: 1.5, sd: 1 }, 'liquid-line-restriction': { mean: 9, sd: 1.5 } },
    },
    {
      observable: 'standstill',
      set: 0,
      read: undefined,
      expected: { 'short-of-charge': { mean: 0, sd: 1 }, 'liquid-line-restriction': { mean: 9, sd: 1 } },
    },
  ],
}

const words = (diagnosis: typeof TWO) => {
  const { statement, from } = explanation(diagnosis as Diagnosis)
  return [statement, ...from.map((row) => row.statement)].map((said) => render(said, METRIC))
}

describe('an explanation', () => {
  it('[property] sets each telling reading beside what the runner-up would have made of it', () => {
    const [headline, ...rows] = words(TWO)
    expect(headline).toBe('short of charge explains the readings better than restricted liquid line')
    expect(rows).toHaveLength(1)
    expect(rows[0]).toMatch(/^were it restricted liquid line, subcooling would be about 9.*; it is 2/)
  })

  it('[property] does not hide a reading that speaks against the best cause', () => {
    const [best, other] = TWO.singles
    const [, ...rows] = words({ ...TWO, singles: [other!, best!] })
    expect(rows[0]).toMatch(/^were it restricted liquid line/)
  })

  it('[limit] of one cause says so', () => {
    expect(words({ ...TWO, singles: TWO.singles.slice(0, 1) })).toEqual(['only one cause is known for such a system'])
  })
})
