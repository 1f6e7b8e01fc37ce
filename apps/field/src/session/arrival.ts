import type { VisitEvent, VisitFile } from '@chargewright/visit'
import type { StoredVisit } from '../store/visit-store.ts'

/** What to do with a visit file that comes in, so that neither side loses an entry. */
export type Arrival =
  | { readonly kind: 'new' }
  | { readonly kind: 'known' }
  | { readonly kind: 'longer'; readonly events: readonly VisitEvent[] }
  /** The two went different ways: the file is kept beside ours, as a visit of its own. */
  | { readonly kind: 'parted' }

/** Compares a file with the visit of the same id on this device. Events are compared by content, not by id alone. */
export function arrivalOf(file: VisitFile, here: StoredVisit | undefined): Arrival {
  if (!here) return { kind: 'new' }
  const shared = Math.min(file.events.length, here.events.length)
  for (let i = 0; i < shared; i++) {
    if (!sameData(file.events[i], here.events[i])) return { kind: 'parted' }
  }
  return file.events.length > shared ? { kind: 'longer', events: file.events.slice(shared) } : { kind: 'known' }
}

/** Equal as JSON, whatever the order of the keys. */
function sameData(a: unknown, b: unknown): boolean {
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return a === b
  const keys = Object.keys(a)
  if (keys.length !== Object.keys(b).length) return false
  return keys.every((key) => sameData(a[key as keyof typeof a], b[key as keyof typeof b]))
}
