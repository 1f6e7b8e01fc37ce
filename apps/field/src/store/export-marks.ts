import type { IDBPDatabase } from 'idb'
import type { Tables } from './database.ts'

/** How many events of each log the last export held: of this device, part of no record. */
export interface ExportMarks {
  readonly read: () => Promise<ReadonlyMap<string, number>>
  readonly write: (marks: ReadonlyMap<string, number>) => Promise<void>
}

/** Marks that outlive the page. Where they cannot be kept, everything counts as not exported. */
export function browserMarks(database: IDBPDatabase<Tables>): ExportMarks {
  return {
    read: async () => {
      try {
        const [logs, counts] = await Promise.all([database.getAllKeys('exported'), database.getAll('exported')])
        return new Map(logs.map((log, i) => [log, counts[i]!]))
      } catch {
        return new Map()
      }
    },
    write: async (marks) => {
      try {
        const tx = database.transaction('exported', 'readwrite')
        await Promise.all([...[...marks].map(([log, count]) => tx.store.put(count, log)), tx.done])
      } catch {
        // The file is written all the same; it will be asked for once more.
      }
    },
  }
}

/** Marks as long as the page is open. */
export function memoryMarks(): ExportMarks {
  let kept: ReadonlyMap<string, number> = new Map()
  return {
    read: async () => kept,
    write: async (marks) => {
      kept = marks
    },
  }
}
