import type { EventOf, VisitEvent } from '@chargewright/visit'

/** The reason by which an undo is told from a withdrawal that was meant for itself. */
export const UNDONE = 'undone'

/**
 * The event that the next undo withdraws: the latest act that still stands. An undo is itself a correction, so nothing
 * is erased, and undoing again goes one act further back.
 */
export function nextUndo(events: readonly VisitEvent[]): VisitEvent | undefined {
  const withdrawn = new Set<string>()
  for (const event of events.toReversed()) {
    if (withdrawn.has(event.id)) continue
    if (!isUndo(event)) return event
    withdrawn.add(event.corrects)
  }
  return undefined
}

export function isUndo(event: VisitEvent): event is EventOf<'correction'> {
  return event.kind === 'correction' && event.reason === UNDONE && event.replacement === undefined
}
