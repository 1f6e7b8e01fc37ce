import { aged } from '../aged.ts'
import type { DeviceKind } from '../case.ts'
import { type Design, drawDesign } from '../design.ts'
import type { Running } from '../operate.ts'
import { seeded } from '../random.ts'
import { RATING } from '../rating.ts'
import { settle } from '../settle.ts'
import type { Unit, Weather } from '../unit.ts'

/** A drawn unit, its sound state at the rating point, and what becomes of it when something is changed. */
export interface Sample {
  readonly kind: DeviceKind
  readonly design: Design
  readonly unit: Unit
  readonly sound: Running
  readonly now: (change: {
    readonly unit?: Unit
    readonly weather?: Partial<Weather>
    readonly charge?: number
  }) => Running | undefined
}

/** So many units of a kind as production and years made them. */
export function samples(kind: DeviceKind, count: number, seed: number): readonly Sample[] {
  const found: Sample[] = []
  for (let k = 0; found.length < count; k++) {
    const random = seeded(seed + 7919 * k)
    const design = drawDesign(kind, random, {})
    if (!design) continue
    const unit = aged(design.unit, random, 1)
    const sound = settle(unit, design, RATING, design.right_kg)
    if (!sound) continue
    const now: Sample['now'] = (change) =>
      settle(change.unit ?? unit, design, { ...RATING, ...change.weather }, design.right_kg * (change.charge ?? 1))
    found.push({ kind, design, unit, sound, now })
  }
  return found
}

/** Value below which a share of them lies. */
export function quantile(values: readonly number[], share: number): number {
  const sorted = [...values].sort((a, b) => a - b)
  return sorted[Math.min(Math.floor(share * sorted.length), sorted.length - 1)] ?? Number.NaN
}

export const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length
