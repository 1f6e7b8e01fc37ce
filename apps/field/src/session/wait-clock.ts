import { type Assessment, WAIT_TIMES } from '@chargewright/charging'
import type { Quantity } from '@chargewright/quantity'
import { type FactOf, type Origin, runningWait, type Visit } from '@chargewright/visit'

/** A wait by the clock of this device, in milliseconds since 1970. */
export interface WaitClock {
  readonly purpose: FactOf<'wait'>['purpose']
  readonly duration: Quantity<'duration'>
  readonly begins: number
  readonly ends: number
  /** Whether somebody began it; else it follows from the last change to the system. */
  readonly isBegun: boolean
}

export type WaitState =
  | { readonly kind: 'running'; readonly left_s: number }
  | { readonly kind: 'over' }
  /** The clock shows a time from before what was entered: it was set back, or the entries came from another device. */
  | { readonly kind: 'set-back' }

/** Clocks of two devices, or one that was corrected a little, may differ by this much. */
const SLACK_MS = 60_000

/**
 * The wait that goes on: the one that was begun, else the rest that the last change to the system asks for. It is
 * reckoned from times in the log and not counted, so that a locked screen or a restart takes nothing from it.
 */
export function waitClock(
  visit: Visit,
  change: Origin | undefined,
  conditions: Assessment['conditions'],
): WaitClock | undefined {
  const begun = runningWait(visit)
  if (begun) return { ...begun, begins: Date.parse(begun.at), ends: Date.parse(begun.ends), isBegun: true }
  if (!change) return undefined
  const isOpen = (id: 'equalised' | 'settled') => conditions.some((one) => one.id === id && one.state !== 'met')
  if (isOpen('equalised')) return after(change, 'equalise', WAIT_TIMES.equaliseTime.quantity)
  return isOpen('settled') ? after(change, 'settle', WAIT_TIMES.settleTime.quantity) : undefined
}

function after({ at }: Origin, purpose: WaitClock['purpose'], duration: Quantity<'duration'>): WaitClock {
  const begins = Date.parse(at)
  return { purpose, duration, begins, ends: begins + duration.si * 1000, isBegun: false }
}

/** How far a wait is at a moment. `latest` is the time of the last entry: no moment lies before it. */
export function waitState({ begins, ends }: WaitClock, now: number, latest: number): WaitState {
  if (!(now + SLACK_MS >= Math.max(begins, latest))) return { kind: 'set-back' }
  const left_s = Math.ceil((ends - now) / 1000)
  return left_s > 0 ? { kind: 'running', left_s } : { kind: 'over' }
}

/** The time of the last entry of a visit; an entry without a readable time counts for nothing. */
export const latestEntry = ({ log }: Pick<Visit, 'log'>): number =>
  log.reduce((latest, { at }) => Math.max(latest, Date.parse(at) || 0), 0)

/** Minutes that are told aloud on the way: few, so that a voice does not talk all the time. */
export function minutesTold(left_s: number): number {
  const minutes = Math.ceil(left_s / 60)
  return minutes <= 1 ? 1 : Math.ceil(minutes / 5) * 5
}
