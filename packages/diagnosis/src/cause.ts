/** What may be wrong with a system. */
export const CAUSES = [
  'sound',
  'short-of-charge',
  'overcharged',
  'low-indoor-air',
  'poor-condenser-air',
  'liquid-line-restriction',
  'non-condensables',
  'weak-compressor',
  'valve-feeds-too-little',
  'valve-feeds-too-much',
] as const

export type Cause = (typeof CAUSES)[number]
