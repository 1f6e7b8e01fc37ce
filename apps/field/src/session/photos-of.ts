import { fold, type Visit } from '@chargewright/visit'
import type { StoredSystem, StoredVisit } from '../store/visit-store.ts'

/** A photo that stands in a log. */
export interface ShownPhoto {
  readonly log: string
  readonly eventId: string
  readonly at: string
  readonly subject: string
  readonly file: string
}

/** The photos of a log, without those taken away; none where this version cannot read the log. */
export function photosOf(stored: StoredSystem | StoredVisit): readonly ShownPhoto[] {
  try {
    return photosIn(fold(stored))
  } catch {
    return []
  }
}

/** The photos of a log that is read already. */
export function photosIn({ id, log }: Pick<Visit, 'id' | 'log'>): readonly ShownPhoto[] {
  return log.flatMap(({ id: eventId, at, holds }) => {
    if (holds?.kind !== 'photo') return []
    return [{ log: id, eventId, at, subject: holds.subject, file: holds.file }]
  })
}
