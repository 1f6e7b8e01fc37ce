import type { DeviceKind, Trouble } from '../../population/case.ts'

/** What else may be wrong with a plant whose charge is right. */
export const OTHER_TROUBLES: Readonly<Record<DeviceKind, readonly Trouble[]>> = {
  'fixed-orifice': [
    'low-indoor-air',
    'poor-condenser-air',
    'liquid-line-restriction',
    'non-condensables',
    'weak-compressor',
  ],
  capillary: ['low-indoor-air', 'poor-condenser-air', 'liquid-line-restriction', 'non-condensables', 'weak-compressor'],
  thermostatic: [
    'low-indoor-air',
    'poor-condenser-air',
    'liquid-line-restriction',
    'non-condensables',
    'weak-compressor',
    'valve-feeds-too-little',
    'valve-feeds-too-much',
  ],
}
