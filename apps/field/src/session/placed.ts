import { fold } from '@chargewright/visit'
import type { Shelf, StoredVisit } from '../store/visit-store.ts'

/** The visits at the systems to which they were moved, as far as those are on this device. */
export function placed({ systems, visits }: Shelf): Shelf {
  const here = new Set(systems.map(({ id }) => id))
  const place = (visit: StoredVisit) => {
    const to = movedTo(visit)
    return to !== undefined && here.has(to) ? { ...visit, system: to } : visit
  }
  return { systems, visits: visits.map(place) }
}

function movedTo({ id, events }: StoredVisit): string | undefined {
  // Most were never moved, and a log that this version cannot read is not asked.
  if (!events.some((event) => event?.kind === 'visit-moved')) return undefined
  try {
    return fold({ id, events })
      .log.flatMap(({ holds }) => (holds?.kind === 'visit-moved' ? [holds.to] : []))
      .at(-1)
  } catch {
    return undefined
  }
}
