import { fail, ok, type Problem, type Result } from '@chargewright/quantity'
import { checkVisitFile, type Fact, readVisitFile, type VisitEvent, type VisitFile } from '@chargewright/visit'
import { computed, type ReadonlySignal, signal } from '@preact/signals'
import type { StoreProblem } from '../store/store-problem.ts'
import type { StoredVisit, VisitStore } from '../store/visit-store.ts'
import { arrivalOf } from './arrival.ts'
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

/** The visits of this device and what can be done with them. What it shows is what the store holds. */
export interface Session {
  /** Undefined until first read. */
  readonly visits: ReadonlySignal<readonly StoredVisit[] | undefined>
  readonly keeping: ReadonlySignal<Keeping>
  readonly refresh: () => Promise<void>
  readonly start: () => Kept<string>
  readonly record: (visitId: string, fact: Fact) => Kept
  /** Puts another fact in the place of an event, or withdraws it; the reason goes on record. */
  readonly correct: (visitId: string, eventId: string, replacement: Fact | undefined, reason?: string) => Kept
  readonly undo: (visitId: string) => Kept
  /** Takes back the last undo, as long as nothing new was entered. */
  readonly redo: (visitId: string) => Kept
  readonly takeIn: (json: string) => Kept<TakenIn>
  readonly setAside: (ids: readonly string[], aside: boolean) => Kept
  readonly seed: (files: readonly VisitFile[]) => Kept
}

export type Keeping =
  | { readonly kind: 'kept' | 'keeping' }
  | { readonly kind: 'not-kept'; readonly problem: StoreProblem }

export interface TakenIn {
  readonly id: string
  readonly arrival: ReturnType<typeof arrivalOf>['kind']
}

export function createSession({ store, now, newId }: Surroundings): Session {
  const visits = signal<readonly StoredVisit[] | undefined>(undefined)
  const writing = signal(0)
  const failure = signal<StoreProblem | undefined>(undefined)

  async function refresh(): Promise<void> {
    const all = await store.all()
    if (all.ok) visits.value = all.value
    else failure.value = all.error
  }
  store.watch(() => void refresh())

  /** One write: counted while it runs, and shown before it is told as kept. */
  async function keep(write: () => ReturnType<VisitStore['add']>): Kept {
    writing.value++
    const result = await write()
    writing.value--
    failure.value = result.ok ? undefined : result.error
    if (!result.ok) return fail({ kind: 'store', problem: result.error })
    await refresh()
    return result
  }

  async function append(visitId: string, event: VisitEvent): Kept {
    const checked = checkVisitFile({ format: 'chargewright-visit', version: 1, id: visitId, events: [event] })
    if (!checked.ok) return fail({ kind: 'problems', problems: checked.error })
    return keep(() => store.append(visitId, checked.value.events))
  }

  async function correct(visitId: string, corrects: string, replacement: Fact | undefined, reason?: string): Kept {
    const event = { id: newId(), at: now(), kind: 'correction', corrects } as const
    return append(visitId, { ...event, ...(replacement && { replacement }), ...(reason !== undefined && { reason }) })
  }

  return {
    visits,
    keeping: computed(() => {
      if (writing.value > 0) return { kind: 'keeping' }
      return failure.value ? { kind: 'not-kept', problem: failure.value } : { kind: 'kept' }
    }),
    refresh,
    start: async () => {
      const id = newId()
      const added = await keep(() => store.add([{ id, origin: 'started-here', setAside: false, events: [] }]))
      return added.ok ? ok(id) : added
    },
    record: (visitId, fact) => append(visitId, { id: newId(), at: now(), ...fact }),
    correct: (visitId, eventId, replacement, reason) =>
      correct(visitId, eventId, replacement, reason === undefined ? undefined : ownReason(reason)),
    undo: async (visitId) => {
      const last = nextUndo(visits.value?.find(({ id }) => id === visitId)?.events ?? [])
      return last ? correct(visitId, last.id, undefined, UNDONE) : ok(undefined)
    },
    redo: async (visitId) => {
      const last = nextRedo(visits.value?.find(({ id }) => id === visitId)?.events ?? [])
      return last ? correct(visitId, last.by.id, undefined, REDONE) : ok(undefined)
    },
    takeIn: async (json) => {
      const file = readVisitFile(json)
      if (!file.ok) return fail({ kind: 'problems', problems: file.error })
      const here = await store.one(file.value.id)
      if (!here.ok) return fail({ kind: 'store', problem: here.error })
      const arrival = arrivalOf(file.value, here.value)
      const id = arrival.kind === 'parted' ? newId() : file.value.id
      const taken = await keep(async () => {
        if (arrival.kind === 'known') return store.setAside([id], false)
        if (arrival.kind === 'longer') return store.append(id, arrival.events)
        return store.add([storedFrom({ ...file.value, id }, 'imported')])
      })
      return taken.ok ? ok({ id, arrival: arrival.kind }) : taken
    },
    setAside: (ids, aside) => keep(() => store.setAside(ids, aside)),
    seed: (files) => keep(() => store.add(files.map((file) => storedFrom(file, 'demo')))),
  }
}

function storedFrom({ id, about, events }: VisitFile, origin: StoredVisit['origin']): StoredVisit {
  return { id, origin, ...(about !== undefined && { about }), setAside: false, events }
}
