import { findUnit, fromSi, type Problem } from '@chargewright/quantity'
import type { Move, System } from './visit.ts'

const FIELD = 'Refrigerant moved'
const AGAINST_ALL = 'Refrigerant moved, against the whole nameplate charge'

/** The nameplate's charge in the unit of the scale is a rounded one. */
const ROUNDED = 1.02

/**
 * A weighed move that is questioned and not refused: nothing at all, or more than the whole nameplate charge at once.
 * Undefined where it is plausible. Common practice.
 */
export function doubtMove({ fact, mass }: Move, { figures }: System): Problem | undefined {
  if (mass.si === 0) return { kind: 'unreadable', field: FIELD, value: fact.mass, accepted: 'more than nothing' }
  const most = figures.nameplateCharge?.quantity.si
  if (most === undefined || mass.si <= ROUNDED * most) return undefined
  const unit = findUnit('oz', 'mass')!
  const ounces = (kg: number) => Number(fromSi(kg, unit).toPrecision(4))
  return {
    kind: 'out-of-range',
    field: AGAINST_ALL,
    value: ounces(mass.si),
    min: 0,
    max: ounces(most),
    unit: unit.symbol,
  }
}
