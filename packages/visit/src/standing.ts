import type { Problem } from '@chargewright/quantity'
import type { Fact, VisitEvent } from './event.ts'

/** One line of the log: what was entered, and what holds of it now. */
export interface LogEntry {
  readonly id: string
  /** Time of entry as the device told it. */
  readonly at: string
  readonly by?: string
  /** Place in the order of events, from 0. */
  readonly position: number
  readonly entered: Fact
  /** The fact that holds: as entered, as corrected, or nothing when it was withdrawn. */
  readonly holds: Fact | undefined
  /** Id of the correction that is in force. */
  readonly correctedBy?: string
}

/**
 * Applies the corrections. A correction holds unless it is itself withdrawn; of several on one event the last one
 * holds. Nothing is lost: every fact stays in the log as it was entered.
 */
export function standing(events: readonly VisitEvent[]): {
  readonly log: readonly LogEntry[]
  readonly problems: readonly Problem[]
} {
  const problems: Problem[] = []
  const positions = new Map<string, number>()
  events.forEach((event, i) => {
    if (positions.has(event.id)) {
      problems.push({ kind: 'unreadable', field: `events.${i}.id`, value: event.id, accepted: 'an id not used before' })
    } else positions.set(event.id, i)
  })

  // From the last event backwards, because a correction may be withdrawn by a later one.
  const corrections = new Map<string, VisitEvent & { readonly kind: 'correction' }>()
  for (let i = events.length - 1; i >= 0; i--) {
    const event = events[i]!
    if (event.kind !== 'correction' || isWithdrawn(corrections.get(event.id))) continue
    const target = positions.get(event.corrects)
    if (target === undefined || target >= i) {
      problems.push({
        kind: 'unknown',
        field: `events.${i}.corrects`,
        value: event.corrects,
        accepted: 'the id of an earlier event',
      })
    } else if (!corrections.has(event.corrects)) corrections.set(event.corrects, event)
  }

  const log = events.flatMap((event, position): LogEntry[] => {
    if (event.kind === 'correction') return []
    const { id, at, by, ...entered } = event
    const correction = corrections.get(id)
    return [
      {
        id,
        at,
        ...(by === undefined ? {} : { by }),
        position,
        entered,
        holds: correction ? correction.replacement : entered,
        ...(correction ? { correctedBy: correction.id } : {}),
      },
    ]
  })
  return { log, problems }
}

function isWithdrawn(correction: { readonly replacement?: Fact } | undefined): boolean {
  return correction !== undefined && correction.replacement === undefined
}
