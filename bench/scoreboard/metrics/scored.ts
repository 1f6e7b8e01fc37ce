import type { Case, Trouble } from '../../population/case.ts'
import type { Verdict } from '../verdict.ts'

/** One case with what one judge said of it. */
export interface Scored {
  readonly case: Pick<Case, 'half' | 'plate' | 'truth'>
  readonly verdict: Verdict
}

/** A charge this near to the right one is right: the readings of a visit cannot resolve less. */
export const RIGHT = 0.05
/** A charge this far off must not be missed. */
export const FAR_OFF = 0.1

export const isShort = ({ case: { truth } }: Scored): boolean => truth.chargeError < -RIGHT
export const isOver = ({ case: { truth } }: Scored): boolean => truth.chargeError > RIGHT
export const isSound = ({ case: { truth } }: Scored): boolean => truth.troubles.length === 0
export const isAnswered = ({ verdict }: Scored): boolean => verdict.kind !== 'no-verdict'
export const isAct = ({ verdict: { kind } }: Scored): boolean => kind === 'add' || kind === 'recover'

/** Something is wrong with it, but not the charge. */
export const isOtherTrouble = (scored: Scored): boolean => !isSound(scored) && !isShort(scored) && !isOver(scored)

/** Told to add where it is not short, or to recover where it holds no more than it should. */
export const isHarmful = (scored: Scored): boolean =>
  (scored.verdict.kind === 'add' && !isShort(scored)) || (scored.verdict.kind === 'recover' && !isOver(scored))

/** Names what is there: of two troubles, either. */
export function isRightlyNamed(scored: Scored): boolean {
  const { verdict } = scored
  switch (verdict.kind) {
    case 'add':
    case 'recover':
      return !isHarmful(scored)
    case 'other':
      return scored.case.truth.troubles.some(({ kind }: { kind: Trouble }) => kind === verdict.cause)
    case 'hold':
    case 'no-verdict':
      return false
  }
}

/** Neither a wrong name nor a trouble overlooked. */
export const isRight = (scored: Scored): boolean =>
  isSound(scored) ? scored.verdict.kind === 'hold' : isRightlyNamed(scored)
