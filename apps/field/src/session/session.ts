import type { Fact, SystemStatement, VisitFile } from '@chargewright/visit'
import { computed, type ReadonlySignal } from '@preact/signals'
import type { Photo, StoredSystem, StoredVisit, VisitStore } from '../store/visit-store.ts'
import { createKeeper } from './keeper.ts'
import type { Keeping, Kept } from './kept.ts'
import { logActs } from './log-acts.ts'
import { shelfActs } from './shelf-acts.ts'
import type { TakingIn } from './taking-in.ts'

export type { Keeping, Kept, NotKept } from './kept.ts'

/** Everything of the outside world that a session needs. */
export interface Surroundings {
  readonly store: VisitStore
  /** The time now, as an ISO timestamp. */
  readonly now: () => string
  /** An id that is never given again, on any device. */
  readonly newId: () => string
}

/**
 * The systems and visits of this device and what can be done with them. What it shows is what the store holds. A log
 * is that of a visit or of a system, by its id.
 */
export interface Session {
  /** Undefined until first read. */
  readonly systems: ReadonlySignal<readonly StoredSystem[] | undefined>
  readonly visits: ReadonlySignal<readonly StoredVisit[] | undefined>
  /** The visits as they will be when the write that runs now is through: to work ahead with, never to be shown. */
  readonly ahead: ReadonlySignal<readonly StoredVisit[] | undefined>
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
  /** A visit was made at another system than was thought. An undo of the visit takes it back. */
  readonly move: (visit: string, to: string) => Kept
  readonly takeIn: (json: string) => Kept<TakenIn>
  readonly setAside: (ids: readonly string[], aside: boolean) => Kept
  readonly seed: (files: readonly VisitFile[]) => Kept
}

export type TakenIn = Omit<TakingIn, 'changes'>

export function createSession({ store, now, newId }: Surroundings): Session {
  const keeper = createKeeper(store)
  const { shelf, ahead, keeping, refresh } = keeper
  const head = () => ({ id: newId(), at: now() })
  return {
    systems: computed(() => shelf.value?.systems),
    visits: computed(() => shelf.value?.visits),
    ahead: computed(() => ahead.value?.visits),
    keeping,
    refresh,
    photo: async (file) => {
      const photo = await store.photo(file)
      return photo.ok ? photo.value : undefined
    },
    ...logActs({ ...keeper, head, newId }),
    ...shelfActs({ ...keeper, head, newId }),
  }
}
