import type { Cause, Single } from '@chargewright/diagnosis'
import { LOSS, RIGHT_WITHIN } from './loss-table.ts'

/** What can be said or done at once. */
export type Act = 'add' | 'recover' | 'hold' | Exclude<Cause, 'sound' | 'short-of-charge' | 'overcharged'>

/** Probability of each truth that losses tell apart. */
export type Truths = Readonly<Partial<Record<Cause, number>>>

/**
 * Probabilities of the truths: a charge so little off that it is right counts as sound.
 *
 * @param singles of a diagnosis
 */
export function truthsOf(singles: readonly Single[]): Truths {
  const truths: Partial<Record<Cause, number>> = {}
  let sound = 0
  for (const { cause, probability, charge } of singles) {
    const off =
      cause === 'short-of-charge'
        ? below((-RIGHT_WITHIN - charge.mean) / charge.sd)
        : cause === 'overcharged'
          ? below((charge.mean - RIGHT_WITHIN) / charge.sd)
          : 1
    const share = cause === 'sound' ? 0 : off
    truths[cause] = probability * share
    sound += probability * (1 - share)
  }
  return { ...truths, sound }
}

/** Chance that a logistic variable of unit variance lies below z: near enough to the normal one, and never 0. */
const below = (z: number) => 1 / (1 + Math.exp((-Math.PI / Math.sqrt(3)) * z))

/** Loss of an act were this the truth. */
function lossOf(act: Act, truth: Cause): number {
  switch (act) {
    case 'add':
    case 'recover': {
      const right = act === 'add' ? 'short-of-charge' : 'overcharged'
      if (truth === right) return 0
      if (truth === 'sound') return LOSS.actOnSound
      return isCharge(truth) ? LOSS.harmfulAct : LOSS.actOnOther
    }
    case 'hold':
      if (truth === 'sound') return 0
      return isCharge(truth) ? LOSS.missedCharge : LOSS.missedFault
    default:
      if (truth === act) return 0
      return truth === 'sound' ? LOSS.falseAlarm : LOSS.wrongName
  }
}

const isCharge = (truth: Cause): boolean => truth === 'short-of-charge' || truth === 'overcharged'

/** Expected loss of every act, the least first. */
export function expectedLosses(truths: Truths): readonly { readonly act: Act; readonly loss: number }[] {
  const known = Object.entries(truths) as readonly (readonly [Cause, number])[]
  const acts = known.map(([truth]) => actFor(truth))
  return acts
    .map((act) => ({ act, loss: known.reduce((sum, [truth, p]) => sum + p * lossOf(act, truth), 0) }))
    .toSorted((a, b) => a.loss - b.loss)
}

/** The act that is right where this is the truth. */
function actFor(truth: Cause): Act {
  switch (truth) {
    case 'sound':
      return 'hold'
    case 'short-of-charge':
      return 'add'
    case 'overcharged':
      return 'recover'
    default:
      return truth
  }
}
