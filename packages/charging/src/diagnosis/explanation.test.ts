import type { Cause, Diagnosis } from '@chargewright/diagnosis'
import { INCH_POUND, render } from '@chargewright/quantity'
import { expect, test } from 'vitest'
import { explanation, type Told } from './explanation.ts'

const spread = (mean: number, sd: number) => ({ mean, sd })
/** An invented visit: superheat as a short charge has it, a drier that does not cool the liquid. */
const diagnosis = {
  readings: [
    {
      observable: 'superheat',
      set: 0,
      read: 14,
      expected: { 'short-of-charge': spread(13, 2), 'liquid-line-restriction': spread(15, 2), sound: spread(5, 2) },
    },
    {
      observable: 'drierDrop',
      set: 0,
      read: 0,
      expected: {
        'short-of-charge': spread(0.2, 0.5),
        'liquid-line-restriction': spread(4.5, 1),
        sound: spread(0, 0.5),
      },
    },
    { observable: 'compressorPower', set: 0, read: Math.log(2000), expected: { sound: spread(Math.log(2300), 0.05) } },
    { observable: 'discharge', set: 0, read: undefined, expected: { sound: spread(340, 3) } },
  ],
  singles: [],
} as unknown as Diagnosis

const words = (cause: Cause) => {
  const { statement, from } = explanation(diagnosis, cause)
  return [statement, ...from.map((line) => line.statement)].map((each) => render(each, INCH_POUND))
}

test('[property] a cause that fits says so, and a reading that was not taken is not spoken of', () => {
  expect(words('short-of-charge')).toEqual([
    'Were the charge short, no reading would be out of place',
    'Superheat would be 23.4 ± 7.2 °F; it is 25.2 °F',
    'Drop over the drier would be 0.4 ± 1.8 °F; it is 0.0 °F',
  ])
})

test('[property] the reading that speaks most against a cause comes first', () => {
  expect(words('liquid-line-restriction')).toEqual([
    'Were the liquid line restricted, 1 of 2 readings would be elsewhere',
    'Drop over the drier would be 8.1 ± 3.6 °F; it is not, it is 0.0 °F',
    'Superheat would be 27.0 ± 7.2 °F; it is 25.2 °F',
  ])
})

test('[property] power is told in watts', () => {
  expect(words('sound')).toContain('Compressor power would be 2300 ± 230 W; it is not, it is 2000 W')
})

const told = (cause: Cause, as: Told, singles: Partial<Record<Cause, number>> = {}, from = diagnosis) => {
  const weighed = Object.entries(singles).map(([cause, probability]) => ({ cause, probability }))
  return render(explanation({ ...from, singles: weighed } as unknown as Diagnosis, cause, as).statement, INCH_POUND)
}

test('[property] where no reading stands out, a cause that is told to be unlikely gets what speaks against it', () => {
  const against = (leaderShare: number, share: number, other: Cause = 'liquid-line-restriction') =>
    told('short-of-charge', { unlikelierThan: other }, { [other]: leaderShare, 'short-of-charge': share })
  // A short charge comes before any reading 16 times to 7 of a restriction, and to 30 of nothing wrong.
  expect(against(0.9, 0.05)).toBe(
    'Were the charge short, no reading alone would be out of place; together they fit it about 41 times less well than a restricted liquid line',
  )
  expect(against(0.999, 0.0001)).toContain('together they fit it more than 1000 times less well')
  expect(against(0.4, 0.3)).toContain('about 3 times less well')
  expect(against(0.55, 0.15, 'sound')).toBe(
    'Were the charge short, no reading alone would be out of place; together they fit it a little less well than nothing wrong',
  )
  expect(against(0.3, 0.2, 'sound')).toBe(
    'Were the charge short, no reading would be out of place; but that is found less often than nothing wrong',
  )
  expect(against(0.3, 0.4, 'sound')).toBe(
    'Were the charge short, no reading would be out of place; but so little off counts as right',
  )
})

test('[property] the cause acted on keeps a sentence that speaks for it', () => {
  expect(told('short-of-charge', 'acted-on')).toBe('Were the charge short, no reading would be out of place')
  expect(told('liquid-line-restriction', 'acted-on')).toBe(
    'Were the liquid line restricted, 1 of 2 readings would be where they are',
  )
})

test('[limit] where one reading stands out against an unlikely cause, it is that which is told', () => {
  expect(told('liquid-line-restriction', { unlikelierThan: 'sound' })).toContain('1 of 2 readings would be elsewhere')
})
