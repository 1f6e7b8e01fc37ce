import type { Hypothesis } from '../hypothesis.ts'
import { withCharge } from './with-charge.ts'

export const shortOfCharge: Hypothesis = {
  cause: 'short-of-charge',
  devices: ['fixed-orifice', 'capillary', 'thermostatic'],
  label: 'short of charge',
  does: 'Starves the evaporator, so its vapour leaves hotter, and leaves too little liquid in the condenser to cool below saturation: superheat up, subcooling and both pressures down. A thermostatic valve hides it until it is wide open.',
  lookAlikes: ['liquid-line-restriction', 'valve-feeds-too-little', 'weak-compressor'],
  confirms: 'A weighed step brings superheat down and subcooling up as predicted.',
  parameter: { unit: '1', meaning: 'charge that is missing, over the right charge, negative' },
  grid: [-0.5, -0.4, -0.32, -0.25, -0.19, -0.14, -0.09, -0.055],
  prior: 0.16,
  priorSource: 'common practice: leaks and short first fills are the commonest fault of charge',
  apply: withCharge,
}
