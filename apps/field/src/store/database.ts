import { fail, ok, type Result } from '@chargewright/quantity'
import type { VisitEvent } from '@chargewright/visit'
import { type DBSchema, type IDBPDatabase, type IDBPTransaction, openDB } from 'idb'
import { foundSystems } from './found-systems.ts'
import { type StoreProblem, storeProblem } from './store-problem.ts'
import type { Photo, StoredSystem, StoredVisit } from './visit-store.ts'

export interface Tables extends DBSchema {
  readonly systems: { key: string; value: Omit<StoredSystem, 'events'> }
  readonly visits: { key: string; value: Omit<StoredVisit, 'events'> }
  /** One row per event, keyed by log and sequence: rows are only ever added. */
  readonly events: { key: [log: string, sequence: number]; value: VisitEvent }
  readonly photos: { key: string; value: Photo }
  /** Half-typed texts by their place on the page: of this device, part of no record. */
  readonly drafts: { key: string; value: string }
  /** How many events of each log the last export held. */
  readonly exported: { key: string; value: number }
}

export type Writing = IDBPTransaction<Tables, ('systems' | 'visits' | 'events' | 'photos')[], 'readwrite'>
type Upgrading = IDBPTransaction<Tables, Table[], 'versionchange'>

type Table = 'systems' | 'visits' | 'events' | 'photos' | 'drafts' | 'exported'

const NAME = 'chargewright'

/** The tables as they are now; a change to them is a new version with a step of its own below. */
const VERSION = 2

/** Opens the database of this device, and brings one of an older version up to this one: all of it or nothing. */
export async function openDatabase(name = NAME): Promise<Result<IDBPDatabase<Tables>, StoreProblem>> {
  try {
    const database = await openDB<Tables>(name, VERSION, {
      upgrade: async (fresh, from, _to, tx) => {
        if (from < 1) toVersion1(fresh)
        if (from < 2) await toVersion2(fresh, tx as unknown as Upgrading)
      },
      // A newer version in another tab must not wait for this one.
      blocking: (_current, _wanted, event) => (event.target as IDBDatabase).close(),
    })
    return ok(database)
  } catch (error) {
    return fail(storeProblem(error))
  }
}

/** Visits and their events. */
function toVersion1(database: IDBPDatabase<Tables>): void {
  database.createObjectStore('visits', { keyPath: 'id' })
  database.createObjectStore('events')
}

/** Systems, to which the visits belong that were there before, by the name they were given; photos, drafts, exports. */
async function toVersion2(database: IDBPDatabase<Tables>, tx: Upgrading): Promise<void> {
  const systems = database.createObjectStore('systems', { keyPath: 'id' })
  database.createObjectStore('photos', { keyPath: 'file' })
  database.createObjectStore('drafts')
  database.createObjectStore('exported')
  const events = tx.objectStore('events')
  const headers = await tx.objectStore('visits').getAll()
  const visits = await Promise.all(
    headers.map(async (header) => ({ ...header, events: await events.getAll(rowsOf(header.id)) })),
  )
  const found = foundSystems(visits)
  for (const { events: described, ...header } of found.systems) {
    await systems.add(header)
    for (const [sequence, event] of described.entries()) await events.add(event, [header.id, sequence])
  }
  for (const header of headers) {
    await tx.objectStore('visits').put({ ...header, system: found.systemOf.get(header.id)! })
  }
}

/** Every row of one log: a list sorts after every number. */
export function rowsOf(log: string): IDBKeyRange {
  return IDBKeyRange.bound([log], [log, []])
}
