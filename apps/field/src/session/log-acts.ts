import { fail, ok } from '@chargewright/quantity'
import { checkVisitFile, type Fact, isTyped, type VisitEvent } from '@chargewright/visit'
import type { Change } from '../store/visit-store.ts'
import { factsChanged } from './facts-changed.ts'
import type { Keeper } from './keeper.ts'
import type { Kept } from './kept.ts'
import { alongWith } from './moved-along.ts'
import type { Session } from './session.ts'
import { nextRedo, nextUndo, ownReason, REDONE, UNDONE } from './undo.ts'

/** What can be done with the log of one visit or system. */
export type LogActs = Pick<Session, 'record' | 'correct' | 'undo' | 'redo' | 'recordPhoto'>

interface Surroundings extends Pick<Keeper, 'shelf' | 'keep'> {
  readonly head: () => { readonly id: string; readonly at: string }
  readonly newId: () => string
}

export function logActs({ shelf, keep, head, newId }: Surroundings): LogActs {
  async function append(log: string, event: VisitEvent, ...more: readonly Change[]): Kept {
    const checked = checkVisitFile({ format: 'chargewright-visit', version: 1, id: log, events: [event] })
    if (!checked.ok) return fail({ kind: 'problems', problems: checked.error })
    const { events } = checked.value
    return keep([...more, { kind: 'append', to: log, events }, ...following(log, events[0]!)])
  }

  /** What else changes by an event of a visit: its system learns from it, and what came along with a move goes with it. */
  function following(log: string, event: VisitEvent): readonly Change[] {
    const visit = shelf.value?.visits.find(({ id }) => id === log)
    if (!shelf.value || !visit) return []
    const along = event.kind === 'correction' ? alongWith(event, visit, shelf.value) : []
    const corrected = event.kind === 'correction' && visit.events.find(({ id }) => id === event.corrects)
    if (corrected && !isTyped(corrected)) return along
    if (event.kind !== 'correction' && event.kind !== 'system-described') return along
    const facts = factsChanged(visit.events, [...visit.events, event])
    if (!facts) return along
    return [...along, { kind: 'append', to: visit.system, events: [{ ...head(), kind: 'system-described', facts }] }]
  }

  function correct(log: string, corrects: string, replacement: Fact | undefined, reason?: string): Kept {
    const event = { ...head(), kind: 'correction', corrects } as const
    return append(log, { ...event, ...(replacement && { replacement }), ...(reason !== undefined && { reason }) })
  }

  const eventsOf = (log: string): readonly VisitEvent[] => {
    const { visits = [], systems = [] } = shelf.value ?? {}
    return [...visits, ...systems].find(({ id }) => id === log)?.events ?? []
  }

  return {
    record: (log, fact) => append(log, { ...head(), ...fact }),
    correct: (log, eventId, replacement, reason) =>
      correct(log, eventId, replacement, reason === undefined ? undefined : ownReason(reason)),
    undo: async (log) => {
      const last = nextUndo(eventsOf(log))
      return last ? correct(log, last.id, undefined, UNDONE) : ok(undefined)
    },
    redo: async (log) => {
      const last = nextRedo(eventsOf(log))
      return last ? correct(log, last.by.id, undefined, REDONE) : ok(undefined)
    },
    recordPhoto: (log, subject, picture) => {
      const file = `${newId()}.jpg`
      return append(
        log,
        { ...head(), kind: 'photo', subject, file },
        { kind: 'keep-photo', photo: { ...picture, file } },
      )
    },
  }
}
