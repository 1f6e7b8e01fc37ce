import { fold } from '@chargewright/visit'
import type { StoredSystem, StoredVisit } from '../store/visit-store.ts'
import { instantOf } from './local-time.ts'

/** The entry by which a person forgot what visits had taught, and those visits. */
export interface Forgetting {
  readonly eventId: string
  readonly visits: ReadonlySet<string>
}

/** The visits to a system that are in sight, the first one first. */
export function visitsTo(system: string, all: readonly StoredVisit[]): readonly StoredVisit[] {
  const begun = ({ events }: StoredVisit) => (events[0] ? instantOf(events[0].at) : Number.MAX_VALUE)
  const own = all.filter((visit) => visit.system === system && !visit.setAside)
  return own.toSorted((a, b) => begun(a) - begun(b))
}

/** What was forgotten at a system and was not brought back; nothing where this version cannot read its log. */
export function forgettingsOf({ id, events }: Pick<StoredSystem, 'id' | 'events'>): readonly Forgetting[] {
  try {
    return fold({ id, events }).log.flatMap(({ id: eventId, holds }) =>
      holds?.kind === 'lessons-forgotten' ? [{ eventId, visits: new Set(holds.visits) }] : [],
    )
  } catch {
    return []
  }
}

/** What one begins with at a system. */
export interface Lessons {
  /** The visits that are believed, the first one first. */
  readonly visits: readonly StoredVisit[]
  /** What parts them from those before, where that is why they go no further back. */
  readonly forgotten: Forgetting | undefined
}

/**
 * The lessons that a visit begins with: those of the visits before it, back to the last one that was forgotten. Visits
 * that were forgotten together go on to hold among themselves, so that what was found then stays as it was found.
 *
 * @param visits of one system, the first one first
 * @param to the visit; without it, the next one
 */
export function lessonsBefore(
  visits: readonly StoredVisit[],
  forgettings: readonly Forgetting[],
  to?: string,
): Lessons {
  const end = to === undefined ? visits.length : visits.findIndex(({ id }) => id === to)
  const before = visits.slice(0, Math.max(0, end))
  const parting = (i: number) => {
    const after = before[i + 1]?.id ?? to
    return forgettings.findLast(
      (one) => one.visits.has(before[i]!.id) && (after === undefined || !one.visits.has(after)),
    )
  }
  const last = before.findLastIndex((_, i) => parting(i))
  return { visits: before.slice(last + 1), forgotten: last < 0 ? undefined : parting(last) }
}
