import { type Quantile, quantile } from './quantile.ts'
import { isAct, isHarmful, isOver, isShort, type Scored } from './scored.ts'
import { type Share, share } from './share.ts'

/** How good the stated amounts are, all over the right charge. */
export interface Amounts {
  /** Distance of the stated from the true amount, where adding or recovering was rightly called. */
  readonly errorMedian: Quantile | undefined
  readonly errorP90: Quantile | undefined
  /** Stated 90 % intervals that hold the truth, on wrongly charged systems told to add or recover, rightly or not. */
  readonly coverage: Share
  readonly widthMedian: Quantile | undefined
}

export function amounts(scored: readonly Scored[]): Amounts {
  const stated = scored.filter((s) => isAct(s) && (isShort(s) || isOver(s))).flatMap(statedAmount)
  const right = stated.filter(({ harmful }) => !harmful).map(({ off }) => Math.abs(off))
  const widths = stated.map(({ width }) => width)
  return {
    errorMedian: quantile(right, 0.5),
    errorP90: quantile(right, 0.9),
    coverage: share(stated.filter(({ held }) => held).length, stated.length),
    widthMedian: quantile(widths, 0.5),
  }
}

function statedAmount(scored: Scored) {
  const { verdict, case: at } = scored
  if (!(verdict.kind === 'add' || verdict.kind === 'recover') || !verdict.amount) return []
  const sign = verdict.kind === 'add' ? 1 : -1
  const { kg, low_kg, high_kg } = verdict.amount
  const right_kg = at.plate.charge_kg
  const missing = -sign * at.truth.chargeError
  return [
    {
      harmful: isHarmful(scored),
      off: kg / right_kg - missing,
      held: low_kg / right_kg <= missing && missing <= high_kg / right_kg,
      width: (high_kg - low_kg) / right_kg,
    },
  ]
}
