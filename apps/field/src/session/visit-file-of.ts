import type { VisitFile } from '@chargewright/visit'
import type { StoredVisit } from '../store/visit-store.ts'
import { fileName, type SavedFile } from './saved-file.ts'

/** The visit as a file that any program can read; whole, with every correction. */
export function visitFileOf({ id, about, events }: StoredVisit, system: string | undefined): SavedFile {
  const file: VisitFile = {
    format: 'chargewright-visit',
    version: 1,
    id,
    ...(about !== undefined && { about }),
    events: [...events],
  }
  const content = `${JSON.stringify(file, undefined, 2)}\n`
  return { name: fileName(system, 'visit.json'), type: 'application/json', content }
}
