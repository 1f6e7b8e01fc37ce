import { type EventOf, isTyped, type VisitEvent } from '@chargewright/visit'

/** The reasons by which an undo and its taking back are told from corrections that were meant for themselves. */
export const UNDONE = 'undone'
export const REDONE = 'brought back'

/**
 * The event that the next undo withdraws: the latest act that still stands; what nobody typed is no act. An undo is itself a correction, so nothing
 * is erased, and undoing again goes one act further back.
 */
export function nextUndo(events: readonly VisitEvent[]): VisitEvent | undefined {
  return replayed(events).done.at(-1)
}

/** The undo that is taken back next, and the act that it withdrew; none once something new was entered. */
export function nextRedo(events: readonly VisitEvent[]): Undone | undefined {
  return replayed(events).undone.at(-1)
}

export interface Undone {
  readonly act: VisitEvent
  readonly by: EventOf<'correction'>
}

/** What stands and what was undone after all events, each in the order in which it came there. */
function replayed(events: readonly VisitEvent[]) {
  const done: VisitEvent[] = []
  let undone: Undone[] = []
  for (const event of events) {
    const withdrawal = event.kind === 'correction' && event.replacement === undefined ? event : undefined
    if (withdrawal?.reason === UNDONE) {
      const place = done.findLastIndex(({ id }) => id === withdrawal.corrects)
      undone.push(...done.splice(place, place < 0 ? 0 : 1).map((act) => ({ act, by: withdrawal })))
    } else if (withdrawal?.reason === REDONE) {
      const place = undone.findLastIndex(({ by }) => by.id === withdrawal.corrects)
      done.push(...undone.splice(place, place < 0 ? 0 : 1).map(({ act }) => act))
    } else if (isTyped(event)) {
      done.push(event)
      undone = []
    }
  }
  return { done, undone }
}

/** A reason that a person gives is never mistaken for an undo. */
export const ownReason = (reason: string): string => (reason === UNDONE || reason === REDONE ? `${reason}.` : reason)
