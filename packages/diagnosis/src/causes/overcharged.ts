import type { Hypothesis } from '../hypothesis.ts'
import { withCharge } from './with-charge.ts'

export const overcharged: Hypothesis = {
  cause: 'overcharged',
  devices: ['fixed-orifice', 'capillary', 'thermostatic'],
  label: 'overcharged',
  does: 'Backs liquid up in the condenser: subcooling and high-side pressure up, power up; behind a fixed device superheat falls until liquid reaches the compressor.',
  lookAlikes: ['non-condensables', 'poor-condenser-air', 'valve-feeds-too-much'],
  confirms:
    'The standing pressure is that of the refrigerant at the ambient; a weighed recovery brings subcooling down.',
  parameter: { unit: '1', meaning: 'charge in excess, over the right charge' },
  grid: [0.055, 0.09, 0.14, 0.2, 0.28, 0.38, 0.5],
  prior: 0.12,
  priorSource: 'common practice: topped up without weighing',
  apply: withCharge,
}
