import type { CalibratedDevice } from './calibration.ts'
import type { Cause } from './cause.ts'
import { liquidLineRestriction } from './causes/liquid-line-restriction.ts'
import { lowIndoorAir } from './causes/low-indoor-air.ts'
import { nonCondensables } from './causes/non-condensables.ts'
import { overcharged } from './causes/overcharged.ts'
import { poorCondenserAir } from './causes/poor-condenser-air.ts'
import { shortOfCharge } from './causes/short-of-charge.ts'
import { sound } from './causes/sound.ts'
import { valveFeedsTooLittle } from './causes/valve-feeds-too-little.ts'
import { valveFeedsTooMuch } from './causes/valve-feeds-too-much.ts'
import { weakCompressor } from './causes/weak-compressor.ts'
import type { Hypothesis } from './hypothesis.ts'

/** Every cause that is known, by name. */
export const HYPOTHESES: Readonly<Record<Cause, Hypothesis>> = {
  sound,
  'short-of-charge': shortOfCharge,
  overcharged,
  'low-indoor-air': lowIndoorAir,
  'poor-condenser-air': poorCondenserAir,
  'liquid-line-restriction': liquidLineRestriction,
  'non-condensables': nonCondensables,
  'weak-compressor': weakCompressor,
  'valve-feeds-too-little': valveFeedsTooLittle,
  'valve-feeds-too-much': valveFeedsTooMuch,
}

export const hypothesesFor = (device: CalibratedDevice): readonly Hypothesis[] =>
  Object.values(HYPOTHESES).filter(({ devices }) => devices.includes(device))

export const isCharge = (cause: Cause): boolean => cause === 'short-of-charge' || cause === 'overcharged'
