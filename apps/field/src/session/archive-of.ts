import type { ArchiveFile } from '@chargewright/visit'
import type { Photo, Shelf } from '../store/visit-store.ts'
import { toBase64 } from './base64.ts'
import type { SavedFile } from './saved-file.ts'

/**
 * Everything of this device as one file.
 *
 * @param day when it is written, for its name
 */
export function archiveOf(
  { systems, visits }: Shelf,
  photos: readonly Photo[],
  preferences: Readonly<Record<string, string>>,
  day: string,
): SavedFile {
  const file: ArchiveFile = {
    format: 'chargewright-archive',
    version: 1,
    systems: systems.map(({ id, origin, setAside, events }) => ({ id, origin, setAside, events: [...events] })),
    visits: visits.map(({ id, system, origin, about, setAside, events }) => {
      return { id, system, origin, ...(about !== undefined && { about }), setAside, events: [...events] }
    }),
    photos: photos.map(({ file: name, bytes }) => ({ file: name, type: 'image/jpeg', base64: toBase64(bytes) })),
    preferences,
  }
  return { name: `chargewright-${day}.archive.json`, type: 'application/json', content: `${JSON.stringify(file)}\n` }
}
