import { fail, ok, type Result } from '@chargewright/quantity'
import type { StoreProblem } from './store-problem.ts'
import type { Change, Photo, StoredSystem, StoredVisit, VisitStore } from './visit-store.ts'

interface Kept {
  readonly systems: Map<string, StoredSystem>
  readonly visits: Map<string, StoredVisit>
  readonly photos: Map<string, Photo>
}

/** Keeps everything as long as the page is open: for tests, and where the browser refuses to store. */
export function memoryStore(): VisitStore {
  let kept: Kept = { systems: new Map(), visits: new Map(), photos: new Map() }
  const watchers = new Set<() => void>()
  return {
    all: async () => ok(structuredClone({ systems: [...kept.systems.values()], visits: [...kept.visits.values()] })),
    photo: async (file) => ok(structuredClone(kept.photos.get(file))),
    photoFiles: async () => ok([...kept.photos.keys()]),
    write: async (changes) => {
      // On a copy, so that a change that cannot be made takes those before it with it.
      const next = { systems: new Map(kept.systems), visits: new Map(kept.visits), photos: new Map(kept.photos) }
      for (const change of structuredClone(changes)) {
        const made = make(change, next)
        if (!made.ok) return made
      }
      kept = next
      for (const watcher of watchers) watcher()
      return ok(undefined)
    },
    watch: (watcher) => {
      watchers.add(watcher)
      return () => watchers.delete(watcher)
    },
  }
}

function make(change: Change, { systems, visits, photos }: Kept): Result<void, StoreProblem> {
  switch (change.kind) {
    case 'add-system':
      addOnce(systems, change.system.id, change.system)
      return ok(undefined)
    case 'add-visit':
      addOnce(visits, change.visit.id, change.visit)
      return ok(undefined)
    case 'append': {
      const [visit, system] = [visits.get(change.to), systems.get(change.to)]
      if (visit) visits.set(visit.id, { ...visit, events: [...visit.events, ...change.events] })
      else if (system) systems.set(system.id, { ...system, events: [...system.events, ...change.events] })
      else return fail({ kind: 'unknown-log', detail: change.to })
      return ok(undefined)
    }
    case 'set-aside': {
      const [visit, system] = [visits.get(change.id), systems.get(change.id)]
      if (visit) visits.set(visit.id, { ...visit, setAside: change.aside })
      if (system) systems.set(system.id, { ...system, setAside: change.aside })
      return ok(undefined)
    }
    case 'keep-photo':
      addOnce(photos, change.photo.file, change.photo)
      return ok(undefined)
  }
}

function addOnce<T>(to: Map<string, T>, id: string, added: T): void {
  if (!to.has(id)) to.set(id, added)
}
