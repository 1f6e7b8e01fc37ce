import { lastChange } from './last-change.ts'
import type { BegunWait, Visit } from './visit.ts'

/**
 * The wait that was begun last and that no entry has ended: neither a wait of the same purpose that is over, nor a
 * change to the system, which makes every wait before it void. Whether its time has run out, only a clock can tell.
 */
export function runningWait(visit: Pick<Visit, 'begun' | 'waits' | 'moves' | 'adjustments'>): BegunWait | undefined {
  const last = visit.begun.at(-1)
  if (!last) return undefined
  const change = lastChange(visit)
  const isOver =
    (change && change.position > last.position) ||
    visit.waits.some(({ purpose, position }) => purpose === last.purpose && position > last.position)
  return isOver ? undefined : last
}
