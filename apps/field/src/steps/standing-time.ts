import { type Quantity, quantity } from '@chargewright/quantity'
import { FULL_TEST } from '@chargewright/tightness'

/** How far a standing test is. */
export interface StandingTime {
  /** In whole minutes. */
  readonly stood: Quantity<'duration'>
  /** When it will have stood in full. */
  readonly ends: string
}

/** How far a standing test is by the clock of this device; undefined once it has stood in full, or where the clock was set back. */
export function standingTime(begun: string, now: number): StandingTime | undefined {
  const began = Date.parse(begun)
  const stood_s = (now - began) / 1000
  if (!(stood_s >= 0 && stood_s < FULL_TEST.si)) return undefined
  return {
    stood: quantity('duration', 60 * Math.floor(stood_s / 60)),
    ends: new Date(began + FULL_TEST.si * 1000).toISOString(),
  }
}
