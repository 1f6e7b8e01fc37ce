import type { Result } from '@chargewright/quantity'
import type { VisitEvent } from '@chargewright/visit'
import type { StoreProblem } from './store-problem.ts'

/** A visit as this device holds it. The events are the record; the rest says how it came here. */
export interface StoredVisit {
  readonly id: string
  readonly origin: 'started-here' | 'imported' | 'demo'
  /** The free words of the file it came from. */
  readonly about?: string
  /** Out of sight, with everything it holds. Nothing is ever deleted. */
  readonly setAside: boolean
  readonly events: readonly VisitEvent[]
}

/**
 * Keeps visits on this device. Every promise resolves to success only when the data has reached the disk; until then
 * nothing may be shown as kept.
 */
export interface VisitStore {
  /** Every visit, with its events in the order in which they were appended. */
  readonly all: () => Promise<Result<readonly StoredVisit[], StoreProblem>>
  /** One visit, or nothing if it is not here. */
  readonly one: (id: string) => Promise<Result<StoredVisit | undefined, StoreProblem>>
  /** Adds visits, all or none. One whose id is here already stays as it is. */
  readonly add: (visits: readonly StoredVisit[]) => Promise<Result<void, StoreProblem>>
  /** Appends events to a visit, all or none. */
  readonly append: (id: string, events: readonly VisitEvent[]) => Promise<Result<void, StoreProblem>>
  readonly setAside: (ids: readonly string[], aside: boolean) => Promise<Result<void, StoreProblem>>
  /** Calls back after every change, made here or in another tab. Returns the way to stop it. */
  readonly watch: (changed: () => void) => () => void
}
