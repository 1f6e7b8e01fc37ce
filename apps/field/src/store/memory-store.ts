import { fail, ok } from '@chargewright/quantity'
import type { StoredVisit, VisitStore } from './visit-store.ts'

/** Keeps visits as long as the page is open: for tests, and where the browser refuses to store. */
export function memoryStore(): VisitStore {
  const visits = new Map<string, StoredVisit>()
  const watchers = new Set<() => void>()
  const changed = () => {
    for (const watcher of watchers) watcher()
    return ok(undefined)
  }
  return {
    all: async () => ok(structuredClone([...visits.values()])),
    one: async (id) => ok(structuredClone(visits.get(id))),
    add: async (added) => {
      for (const visit of added) if (!visits.has(visit.id)) visits.set(visit.id, structuredClone(visit))
      return changed()
    },
    append: async (id, events) => {
      const visit = visits.get(id)
      if (!visit) return fail({ kind: 'unknown-visit', detail: id })
      visits.set(id, { ...visit, events: [...visit.events, ...structuredClone(events)] })
      return changed()
    },
    setAside: async (ids, setAside) => {
      for (const id of ids) {
        const visit = visits.get(id)
        if (visit) visits.set(id, { ...visit, setAside })
      }
      return changed()
    },
    watch: (watcher) => {
      watchers.add(watcher)
      return () => watchers.delete(watcher)
    },
  }
}
