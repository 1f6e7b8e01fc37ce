import type { VisitEvent } from '@chargewright/visit'

/** What to do with a log that comes in from a file, so that neither side loses an entry. */
export type Arrival =
  | { readonly kind: 'new' }
  | { readonly kind: 'known' }
  | { readonly kind: 'longer'; readonly events: readonly VisitEvent[] }
  /** The two went different ways: the file is kept beside ours. `at` is the id of its first entry that is not ours. */
  | { readonly kind: 'parted'; readonly at: string }

interface Log {
  readonly events: readonly VisitEvent[]
}

/** Compares a file with the log of the same id on this device. Events are compared by content, not by id alone. */
export function arrivalOf(file: Log, here: Log | undefined): Arrival {
  if (!here) return { kind: 'new' }
  const shared = Math.min(file.events.length, here.events.length)
  for (let i = 0; i < shared; i++) {
    const coming = file.events[i]!
    if (!sameData(coming, here.events[i])) return { kind: 'parted', at: coming.id }
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
