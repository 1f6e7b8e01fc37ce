import type { Diagnosis } from '@chargewright/diagnosis'
import { INCH_POUND, render } from '@chargewright/quantity'
import { expect, test } from 'vitest'
import { explanation } from './explanation.ts'

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
} as unknown as Diagnosis

const words = (cause: Parameters<typeof explanation>[1]) => {
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
