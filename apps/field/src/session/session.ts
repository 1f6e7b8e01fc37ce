import { fail, ok, type Problem, type Result } from '@chargewright/quantity'
import {
  checkVisitFile,
  type Fact,
  readVisitFile,
  type SystemStatement,
  type VisitEvent,
  type VisitFile,
} from '@chargewright/visit'
import { computed, type ReadonlySignal, signal } from '@preact/signals'
import { foundSystems } from '../store/found-systems.ts'
import type { StoreProblem } from '../store/store-problem.ts'
import type { Change, Photo, Shelf, StoredSystem, StoredVisit, VisitStore } from '../store/visit-store.ts'
import { carriedOver, isTyped, TRADE_DEFAULT } from './carried.ts'
import { factsChanged } from './facts-changed.ts'
import { type TakingIn, takingIn } from './taking-in.ts'
import { nextRedo, nextUndo, ownReason, REDONE, UNDONE } from './undo.ts'

/** Everything of the outside world that a session needs. */
export interface Surroundings {
  readonly store: VisitStore
  /** The time now, as an ISO timestamp. */
  readonly now: () => string
  /** An id that is never given again, on any device. */
  readonly newId: () => string
}

/** Why something was not kept. What was typed stays where it was typed. */
export type NotKept =
  | { readonly kind: 'problems'; readonly problems: readonly Problem[] }
  | { readonly kind: 'store'; readonly problem: StoreProblem }

export type Kept<T = void> = Promise<Result<T, NotKept>>

/**
 * The systems and visits of this device and what can be done with them. What it shows is what the store holds. A log
 * is that of a visit or of a system, by its id.
 */
export interface Session {
  /** Undefined until first read. */
  readonly systems: ReadonlySignal<readonly StoredSystem[] | undefined>
  readonly visits: ReadonlySignal<readonly StoredVisit[] | undefined>
  readonly keeping: ReadonlySignal<Keeping>
  readonly refresh: () => Promise<void>
  /** A new visit, at a system that is here or at a new one. */
  readonly start: (system?: string) => Kept<string>
  /** A new system: what was stated of it, and what was left to trade habit. */
  readonly startSystem: (stated: SystemStatement, assumed: SystemStatement) => Kept<string>
  /** Appends to a log. What a visit says of its system is handed on to the system. */
  readonly record: (log: string, fact: Fact) => Kept
  /** Puts another fact in the place of an event, or withdraws it; the reason goes on record. */
  readonly correct: (log: string, eventId: string, replacement: Fact | undefined, reason?: string) => Kept
  readonly undo: (log: string) => Kept
  /** Takes back the last undo, as long as nothing new was entered. */
  readonly redo: (log: string) => Kept
  /** Keeps a photo, and that it was taken. */
  readonly recordPhoto: (log: string, subject: string, picture: Omit<Photo, 'file'>) => Kept
  readonly photo: (file: string) => Promise<Photo | undefined>
  readonly takeIn: (json: string) => Kept<TakenIn>
  readonly setAside: (ids: readonly string[], aside: boolean) => Kept
  readonly seed: (files: readonly VisitFile[]) => Kept
}

export type Keeping =
  | { readonly kind: 'kept' | 'keeping' }
  | { readonly kind: 'not-kept'; readonly problem: StoreProblem }

export type TakenIn = Omit<TakingIn, 'changes'>

export function createSession({ store, now, newId }: Surroundings): Session {
  const shelf = signal<Shelf | undefined>(undefined)
  const writing = signal(0)
  const failure = signal<StoreProblem | undefined>(undefined)
  const head = () => ({ id: newId(), at: now() })

  async function refresh(): Promise<void> {
    const all = await store.all()
    if (all.ok) shelf.value = all.value
    else failure.value = all.error
  }
  store.watch(() => void refresh())

  /** One write: counted while it runs, and shown before it is told as kept. */
  async function keep(changes: readonly Change[]): Kept {
    writing.value++
    const result = await store.write(changes)
    writing.value--
    failure.value = result.ok ? undefined : result.error
    if (!result.ok) return fail({ kind: 'store', problem: result.error })
    await refresh()
    return result
  }

  async function append(log: string, event: VisitEvent, ...more: readonly Change[]): Kept {
    const checked = checkVisitFile({ format: 'chargewright-visit', version: 1, id: log, events: [event] })
    if (!checked.ok) return fail({ kind: 'problems', problems: checked.error })
    const { events } = checked.value
    return keep([...more, { kind: 'append', to: log, events }, ...handedOn(log, events[0]!)])
  }

  /** What the system of a visit learns from an event of the visit. */
  function handedOn(log: string, event: VisitEvent): readonly Change[] {
    const visit = shelf.value?.visits.find(({ id }) => id === log)
    const corrected = event.kind === 'correction' && visit?.events.find(({ id }) => id === event.corrects)
    if (!visit || (corrected && !isTyped(corrected))) return []
    const facts = factsChanged(visit.events, [...visit.events, event])
    return facts ? [{ kind: 'append', to: visit.system, events: [{ ...head(), kind: 'system-described', facts }] }] : []
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
    systems: computed(() => shelf.value?.systems),
    visits: computed(() => shelf.value?.visits),
    keeping: computed(() => {
      if (writing.value > 0) return { kind: 'keeping' }
      return failure.value ? { kind: 'not-kept', problem: failure.value } : { kind: 'kept' }
    }),
    refresh,
    start: async (system) => {
      const id = newId()
      const here = { origin: 'started-here', setAside: false } as const
      const at: StoredSystem = { id: system ?? newId(), ...here, events: [] }
      const events = carriedOver(eventsOf(at.id), head)
      const added = await keep([
        { kind: 'add-system', system: at },
        { kind: 'add-visit', visit: { id, system: at.id, ...here, events } },
      ])
      return added.ok ? ok(id) : added
    },
    startSystem: async (stated, assumed) => {
      const id = newId()
      const events: VisitEvent[] = [
        { ...head(), kind: 'system-described', facts: stated },
        { ...head(), by: TRADE_DEFAULT, kind: 'system-described', facts: assumed },
      ]
      const checked = checkVisitFile({ format: 'chargewright-visit', version: 1, id, events })
      if (!checked.ok) return fail({ kind: 'problems', problems: checked.error })
      const said = checked.value.events.filter((event) => {
        return event.kind === 'system-described' && Object.keys(event.facts).length > 0
      })
      const system = { id, origin: 'started-here', setAside: false, events: said } as const
      const added = await keep([{ kind: 'add-system', system }])
      return added.ok ? ok(id) : added
    },
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
    photo: async (file) => {
      const photo = await store.photo(file)
      return photo.ok ? photo.value : undefined
    },
    takeIn: async (json) => {
      const file = readVisitFile(json)
      if (!file.ok) return fail({ kind: 'problems', problems: file.error })
      const here = await store.all()
      if (!here.ok) return fail({ kind: 'store', problem: here.error })
      const { changes, ...taken } = takingIn(file.value, here.value, head)
      const kept = await keep(changes)
      return kept.ok ? ok(taken) : kept
    },
    setAside: (ids, aside) => keep(ids.map((id) => ({ kind: 'set-aside', id, aside }))),
    seed: (files) => {
      const visits = files.map(({ id, about, events }) => {
        return { id, origin: 'demo', ...(about !== undefined && { about }), setAside: false, events } as const
      })
      const { systems, systemOf } = foundSystems(visits)
      return keep([
        ...systems.map((system) => ({ kind: 'add-system', system }) as const),
        ...visits.map(
          (visit) => ({ kind: 'add-visit', visit: { ...visit, system: systemOf.get(visit.id)! } }) as const,
        ),
      ])
    },
  }
}
