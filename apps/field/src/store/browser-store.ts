import { fail, ok, type Result } from '@chargewright/quantity'
import type { VisitEvent } from '@chargewright/visit'
import type { IDBPDatabase } from 'idb'
import { rowsOf, type Tables, type Writing } from './database.ts'
import { type StoreProblem, storeProblem } from './store-problem.ts'
import type { Change, Shelf, VisitStore } from './visit-store.ts'

/** Keeps everything in the browser's own database, and tells the other tabs of every change. */
export function browserStore(database: IDBPDatabase<Tables>): VisitStore {
  const otherTabs = new BroadcastChannel(database.name)
  const watchers = new Set<(changes?: readonly Change[]) => void>()
  const tell = (changes?: readonly Change[]) => {
    for (const watcher of watchers) watcher(changes)
  }
  otherTabs.addEventListener('message', () => tell())

  async function read<T>(work: () => Promise<T>): Promise<Result<T, StoreProblem>> {
    try {
      return ok(await work())
    } catch (error) {
      return fail(storeProblem(error))
    }
  }

  return {
    all: () => read(() => shelfOf(database)),
    photo: (file) => read(() => database.get('photos', file)),
    photoFiles: () => read(() => database.getAllKeys('photos')),
    write: async (changes) => {
      let refused: StoreProblem | undefined
      try {
        const tables = ['systems', 'visits', 'events', 'photos'] as const
        const tx: Writing = database.transaction(tables, 'readwrite', { durability: 'strict' })
        const making = makeAll(changes, tx).then((problem) => {
          refused = problem
        })
        // Awaited together, so that a failure inside never leaves the end of the transaction unheard.
        await Promise.all([making, tx.done])
      } catch (error) {
        return fail(refused ?? storeProblem(error))
      }
      otherTabs.postMessage('changed')
      tell(changes)
      return ok(undefined)
    },
    watch: (watcher) => {
      watchers.add(watcher)
      return () => watchers.delete(watcher)
    },
  }
}

async function shelfOf(database: IDBPDatabase<Tables>): Promise<Shelf> {
  const tx = database.transaction(['systems', 'visits', 'events'])
  const [systems, visits, keys, rows] = await Promise.all([
    tx.objectStore('systems').getAll(),
    tx.objectStore('visits').getAll(),
    tx.objectStore('events').getAllKeys(),
    tx.objectStore('events').getAll(),
  ])
  const eventsOf = new Map([...systems, ...visits].map(({ id }): [string, VisitEvent[]] => [id, []]))
  for (const [row, [log]] of keys.entries()) eventsOf.get(log)?.push(rows[row]!)
  const withEvents = <Header extends { readonly id: string }>(header: Header) => ({
    ...header,
    events: eventsOf.get(header.id)!,
  })
  return { systems: systems.map(withEvents), visits: visits.map(withEvents) }
}

/** Every change in order; at the first that cannot be made, everything is taken back. */
async function makeAll(changes: readonly Change[], tx: Writing): Promise<StoreProblem | undefined> {
  for (const change of changes) {
    const problem = await make(change, tx)
    if (!problem) continue
    tx.abort()
    return problem
  }
  return undefined
}

async function make(change: Change, tx: Writing): Promise<StoreProblem | undefined> {
  const [systems, visits, photos] = [tx.objectStore('systems'), tx.objectStore('visits'), tx.objectStore('photos')]
  switch (change.kind) {
    case 'add-system': {
      const { events, ...header } = change.system
      if (await systems.getKey(header.id)) return
      await systems.add(header)
      return appendRows(tx, header.id, events, 0)
    }
    case 'add-visit': {
      const { events, ...header } = change.visit
      if (await visits.getKey(header.id)) return
      await visits.add(header)
      return appendRows(tx, header.id, events, 0)
    }
    case 'append': {
      const { to, events } = change
      if (!(await visits.getKey(to)) && !(await systems.getKey(to))) return { kind: 'unknown-log', detail: to }
      const last = await tx.objectStore('events').openKeyCursor(rowsOf(to), 'prev')
      return appendRows(tx, to, events, last ? last.key[1] + 1 : 0)
    }
    case 'set-aside': {
      const { id, aside: setAside } = change
      const [visit, system] = [await visits.get(id), await systems.get(id)]
      if (visit) await visits.put({ ...visit, setAside })
      if (system) await systems.put({ ...system, setAside })
      return
    }
    case 'keep-photo':
      if (!(await photos.getKey(change.photo.file))) await photos.add(change.photo)
      return
  }
}

async function appendRows(tx: Writing, log: string, events: readonly VisitEvent[], first: number): Promise<undefined> {
  await Promise.all(events.map((event, i) => tx.objectStore('events').add(event, [log, first + i])))
}
