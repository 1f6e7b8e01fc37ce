import type { VisitFile } from '@chargewright/visit'
import type { StoredVisit } from '../store/visit-store.ts'

/** The visit as a file that anyone can read, and a name for it made of the name of the system. */
export function visitFileOf(
  { id, about, events }: StoredVisit,
  system: string | undefined,
): { name: string; json: string } {
  const file: VisitFile = {
    format: 'chargewright-visit',
    version: 1,
    id,
    ...(about !== undefined && { about }),
    events: [...events],
  }
  const words = (system ?? 'visit')
    .toLowerCase()
    .match(/[\p{L}\p{N}]+/gu)
    ?.slice(0, 8) ?? ['visit']
  return { name: `${words.join('-')}.visit.json`, json: `${JSON.stringify(file, undefined, 2)}\n` }
}
