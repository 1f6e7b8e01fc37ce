import type { Result } from '@chargewright/quantity'
import type { VisitEvent } from '@chargewright/visit'
import type { StoreProblem } from './store-problem.ts'

export type Origin = 'started-here' | 'imported' | 'demo'

/** A log as this device holds it. The events are the record; the rest says how it came here. */
interface StoredLog {
  /** Given once, to one system or one visit. */
  readonly id: string
  readonly origin: Origin
  /** Out of sight, with everything it holds. Nothing is ever deleted. */
  readonly setAside: boolean
  readonly events: readonly VisitEvent[]
}

/** What is known of a system from one visit to the next: its own log of descriptions, photos and notes. */
export interface StoredSystem extends StoredLog {}

export interface StoredVisit extends StoredLog {
  /** Id of the system that it was made at. */
  readonly system: string
  /** The free words of the file it came from. */
  readonly about?: string
}

/** A photo, under the name of the file that its event in a log gives it. */
export interface Photo {
  readonly file: string
  /** Media type. */
  readonly type: string
  readonly bytes: Uint8Array<ArrayBuffer>
}

/** Everything but the photos. */
export interface Shelf {
  readonly systems: readonly StoredSystem[]
  readonly visits: readonly StoredVisit[]
}

/** One thing to do with what is kept. What is here already is never replaced. */
export type Change =
  | { readonly kind: 'add-system'; readonly system: StoredSystem }
  | { readonly kind: 'add-visit'; readonly visit: StoredVisit }
  | { readonly kind: 'append'; readonly to: string; readonly events: readonly VisitEvent[] }
  | { readonly kind: 'set-aside'; readonly id: string; readonly aside: boolean }
  | { readonly kind: 'keep-photo'; readonly photo: Photo }

/**
 * Keeps systems, visits and photos on this device. A write resolves to success only when the data has reached the disk;
 * until then nothing may be shown as kept.
 */
export interface VisitStore {
  /** Every system and visit, with its events in the order in which they were appended. */
  readonly all: () => Promise<Result<Shelf, StoreProblem>>
  /** One photo, or nothing if it is not here. */
  readonly photo: (file: string) => Promise<Result<Photo | undefined, StoreProblem>>
  /** The names of all photos. */
  readonly photoFiles: () => Promise<Result<readonly string[], StoreProblem>>
  /** Makes every change, or none. A log or photo whose id is here already stays as it is. */
  readonly write: (changes: readonly Change[]) => Promise<Result<void, StoreProblem>>
  /**
   * Calls back after every write: with its changes if it was made here, with nothing if it was made in another tab.
   * Returns the way to stop it.
   */
  readonly watch: (changed: (changes?: readonly Change[]) => void) => () => void
}
