import { fail, ok, type Result } from '@chargewright/quantity'
import type { VisitEvent } from '@chargewright/visit'
import { type DBSchema, type IDBPDatabase, type IDBPTransaction, openDB } from 'idb'
import { type StoreProblem, storeProblem } from './store-problem.ts'
import type { StoredVisit, VisitStore } from './visit-store.ts'

type Header = Omit<StoredVisit, 'events'>

interface Tables extends DBSchema {
  readonly visits: { key: string; value: Header }
  /** One row per event, keyed by visit and sequence: rows are only ever added. */
  readonly events: { key: [visit: string, sequence: number]; value: VisitEvent }
}

type Writing = IDBPTransaction<Tables, ('visits' | 'events')[], 'readwrite'>

const NAME = 'chargewright'

/** Keeps visits in the browser's own database, and tells the other tabs of every change. */
export async function browserStore(name = NAME): Promise<Result<VisitStore, StoreProblem>> {
  try {
    const database = await openDB<Tables>(name, 1, {
      upgrade: (fresh) => {
        fresh.createObjectStore('visits', { keyPath: 'id' })
        fresh.createObjectStore('events')
      },
      // A newer version in another tab must not wait for this one.
      blocking: (_current, _wanted, event) => (event.target as IDBDatabase).close(),
    })
    return ok(storeOn(database, name))
  } catch (error) {
    return fail(storeProblem(error))
  }
}

function storeOn(database: IDBPDatabase<Tables>, name: string): VisitStore {
  const otherTabs = new BroadcastChannel(name)
  const watchers = new Set<() => void>()
  const tell = () => {
    for (const watcher of watchers) watcher()
  }
  otherTabs.addEventListener('message', tell)

  /** Runs `work` in one strict transaction; success is told only after it has completed. */
  async function write(work: (tx: Writing) => Promise<StoreProblem | undefined>): Promise<Result<void, StoreProblem>> {
    try {
      const tx = database.transaction(['visits', 'events'], 'readwrite', { durability: 'strict' })
      // Awaited together, so that a failure inside never leaves the end of the transaction unheard.
      const [problem] = await Promise.all([work(tx), tx.done])
      if (problem) return fail(problem)
    } catch (error) {
      return fail(storeProblem(error))
    }
    otherTabs.postMessage('changed')
    tell()
    return ok(undefined)
  }

  return {
    all: async () => {
      try {
        const tx = database.transaction(['visits', 'events'])
        const [headers, keys, events] = await Promise.all([
          tx.objectStore('visits').getAll(),
          tx.objectStore('events').getAllKeys(),
          tx.objectStore('events').getAll(),
        ])
        const eventsOf = new Map(headers.map(({ id }): [string, VisitEvent[]] => [id, []]))
        for (const [row, [visit]] of keys.entries()) eventsOf.get(visit)?.push(events[row]!)
        return ok(headers.map((header) => ({ ...header, events: eventsOf.get(header.id)! })))
      } catch (error) {
        return fail(storeProblem(error))
      }
    },
    one: async (id) => {
      try {
        const tx = database.transaction(['visits', 'events'])
        const [header, events] = await Promise.all([
          tx.objectStore('visits').get(id),
          tx.objectStore('events').getAll(rowsOf(id)),
        ])
        return ok(header && { ...header, events })
      } catch (error) {
        return fail(storeProblem(error))
      }
    },
    add: (visits) =>
      write(async (tx) => {
        for (const { events, ...header } of visits) {
          if (await tx.objectStore('visits').getKey(header.id)) continue
          await tx.objectStore('visits').add(header)
          await appendRows(tx, header.id, events, 0)
        }
        return undefined
      }),
    append: (id, events) =>
      write(async (tx) => {
        if (!(await tx.objectStore('visits').getKey(id))) return { kind: 'unknown-visit', detail: id }
        const last = await tx.objectStore('events').openKeyCursor(rowsOf(id), 'prev')
        await appendRows(tx, id, events, last ? last.key[1] + 1 : 0)
        return undefined
      }),
    setAside: (ids, setAside) =>
      write(async (tx) => {
        for (const id of ids) {
          const header = await tx.objectStore('visits').get(id)
          if (header) await tx.objectStore('visits').put({ ...header, setAside })
        }
        return undefined
      }),
    watch: (watcher) => {
      watchers.add(watcher)
      return () => watchers.delete(watcher)
    },
  }
}

async function appendRows(tx: Writing, id: string, events: readonly VisitEvent[], first: number): Promise<void> {
  await Promise.all(events.map((event, i) => tx.objectStore('events').add(event, [id, first + i])))
}

/** Every row of one visit: a list sorts after every number. */
function rowsOf(id: string): IDBKeyRange {
  return IDBKeyRange.bound([id], [id, []])
}
