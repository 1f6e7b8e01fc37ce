import {
  FAR_OFF,
  isAct,
  isAnswered,
  isHarmful,
  isOtherTrouble,
  isRightlyNamed,
  isSound,
  type Scored,
} from './scored.ts'
import type { Rate } from './share.ts'

/**
 * What a judge is held to. Silence alone cannot win: the last four punish it. Of two troubles either name is right, for
 * the other shows at the next reading; a charge call beside an untold trouble is counted apart.
 */
export const RATES = {
  falseAlarm: {
    title: 'sound system called anything else',
    over: isSound,
    counts: (s) => isAnswered(s) && s.verdict.kind !== 'hold',
  },
  harmfulAct: {
    title: 'told to add where not short, or to recover where not over',
    over: () => true,
    counts: isHarmful,
  },
  touchedForAnother: {
    title: 'told to touch the charge for another trouble',
    over: isOtherTrouble,
    counts: isAct,
  },
  misdiagnosis: {
    title: 'trouble given a wrong name',
    over: (s) => !isSound(s),
    counts: (s) => (isAct(s) || s.verdict.kind === 'other') && !isRightlyNamed(s),
  },
  missedCharge: {
    title: 'charge off by 10 % and more missed, of those answered',
    over: (s) => isFarOff(s) && isAnswered(s),
    counts: (s) => !isRightlyNamed(s),
  },
  missedOrUnanswered: {
    title: 'charge off by 10 % and more missed, no answer counted as missed',
    over: isFarOff,
    counts: (s) => !isRightlyNamed(s),
  },
  calledSound: {
    title: 'other trouble called sound',
    over: isOtherTrouble,
    counts: (s) => s.verdict.kind === 'hold',
  },
  noAnswer: {
    title: 'no answer',
    over: () => true,
    counts: (s) => !isAnswered(s),
  },
} as const satisfies Readonly<Record<string, Rate>>

export type RateName = keyof typeof RATES

export const RATE_NAMES = Object.keys(RATES) as readonly RateName[]

function isFarOff({ case: { truth } }: Scored): boolean {
  return Math.abs(truth.chargeError) >= FAR_OFF
}
