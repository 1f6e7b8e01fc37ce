import { ok } from '@chargewright/quantity'
import { changedShelf } from './changed-shelf.ts'
import type { Change, Photo, Shelf, VisitStore } from './visit-store.ts'

/** Keeps everything as long as the page is open: for tests, and where the browser refuses to store. */
export function memoryStore(): VisitStore {
  let shelf: Shelf = { systems: [], visits: [] }
  const photos = new Map<string, Photo>()
  const watchers = new Set<(changes: readonly Change[]) => void>()
  return {
    all: async () => ok(structuredClone(shelf)),
    photo: async (file) => ok(structuredClone(photos.get(file))),
    photoFiles: async () => ok([...photos.keys()]),
    write: async (changes) => {
      const own = structuredClone(changes)
      const changed = changedShelf(shelf, own)
      if (!changed.ok) return changed
      shelf = changed.value
      for (const change of own) {
        if (change.kind === 'keep-photo' && !photos.has(change.photo.file)) photos.set(change.photo.file, change.photo)
      }
      for (const watcher of watchers) watcher(changes)
      return ok(undefined)
    },
    watch: (watcher) => {
      watchers.add(watcher)
      return () => watchers.delete(watcher)
    },
  }
}
