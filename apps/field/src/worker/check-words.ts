import type { RatingSide, SupplyFinding } from '@chargewright/compressor'

/** Where a reading lies against the maker's figures, in words. */
export const RATING_SIDES: Readonly<Record<RatingSide, string>> = {
  inside: 'inside the band',
  below: 'below the band',
  above: 'above the band',
  'too-close': 'cannot tell',
}

/** What the supply is, in words. */
export const SUPPLY_WORDS: Readonly<Record<SupplyFinding['kind'], string>> = {
  sound: 'sound',
  doubtful: 'doubtful',
  stop: 'do not run it',
}
