import type { BenchRequest } from '@chargewright/cycle'
import { ok } from '@chargewright/quantity'
import { type DBSchema, type IDBPDatabase, openDB } from 'idb'
import type { StoredSystem, StoredVisit, VisitStore } from '../store/visit-store.ts'
import type { Run } from './run.ts'

interface Tables extends DBSchema {
  readonly runs: { key: string; value: Run }
}

/** Keeps practice runs, apart from every real visit; what is taken away here is gone. */
export interface PracticeStore extends VisitStore {
  readonly runs: () => readonly Run[]
  readonly start: (run: Run) => Promise<void>
  readonly ask: (id: string, request: BenchRequest) => Promise<void>
  readonly remove: (id: string) => Promise<void>
}

/** Opens the database of the bench; where the browser refuses one, runs last as long as the page. */
export async function practiceStore(name = 'chargewright-practice'): Promise<PracticeStore> {
  let database: IDBPDatabase<Tables> | undefined
  const runs = new Map<string, Run>()
  try {
    database = await openDB<Tables>(name, 1, {
      upgrade: (fresh) => void fresh.createObjectStore('runs', { keyPath: 'id' }),
    })
    for (const run of await database.getAll('runs')) runs.set(run.id, run)
  } catch {
    // A run is an exercise: one that cannot be kept can still be done.
  }
  const watchers = new Set<Parameters<PracticeStore['watch']>[0]>()
  const tell = () => {
    for (const watcher of watchers) watcher()
  }
  const put = async (run: Run) => {
    runs.set(run.id, run)
    await database?.put('runs', run).catch(() => undefined)
    tell()
  }
  const remove = async (id: string) => {
    runs.delete(id)
    await database?.delete('runs', id).catch(() => undefined)
    tell()
  }
  return {
    runs: () => [...runs.values()].sort((a, b) => b.startedAt.localeCompare(a.startedAt)),
    start: put,
    ask: async (id, request) => {
      const run = runs.get(id)
      if (run) await put({ ...run, requests: [...run.requests, request] })
    },
    remove,
    all: async () => ok({ systems: [...runs.values()].map(systemOf), visits: [...runs.values()].map(visitOf) }),
    // A run has no photos, and a file of a real visit never lands among the exercises: runs come in by `start` alone.
    photo: async () => ok(undefined),
    photoFiles: async () => ok([]),
    write: async (changes) => {
      for (const change of changes) {
        const run = change.kind === 'append' ? runs.get(change.to) : undefined
        if (change.kind === 'append' && run) await put({ ...run, events: [...run.events, ...change.events] })
      }
      return ok(undefined)
    },
    watch: (watcher) => {
      watchers.add(watcher)
      return () => watchers.delete(watcher)
    },
  }
}

const HERE = { origin: 'started-here', setAside: false } as const
const systemId = ({ id }: Run) => `${id}/system`

const systemOf = (run: Run): StoredSystem => ({ id: systemId(run), ...HERE, events: [] })

/** The visit of a run, as the page shows it. */
export const visitOf = (run: Run): StoredVisit => ({ id: run.id, system: systemId(run), ...HERE, events: run.events })
