import type { IDBPDatabase } from 'idb'
import type { Tables } from './database.ts'

/** Half-typed texts by their place: on this device only, and no entries until they are entered. */
export interface Drafts {
  readonly get: (place: string) => string | undefined
  /** Keeps the text of a place, or lets it go. */
  readonly put: (place: string, text: string | undefined) => void
}

/** Drafts that outlive the page. One that cannot be kept still stands in its field as long as the page is open. */
export async function browserDrafts(database: IDBPDatabase<Tables>): Promise<Drafts> {
  const kept = new Map<string, string>()
  try {
    const [places, texts] = await Promise.all([database.getAllKeys('drafts'), database.getAll('drafts')])
    for (const [i, place] of places.entries()) kept.set(place, texts[i]!)
  } catch {
    // Without them the fields begin empty; every entry is in its log all the same.
  }
  return {
    get: (place) => kept.get(place),
    put: (place, text) => {
      if (text === kept.get(place)) return
      if (text === undefined) kept.delete(place)
      else kept.set(place, text)
      const written = text === undefined ? database.delete('drafts', place) : database.put('drafts', text, place)
      written.catch(() => undefined)
    },
  }
}

/** Drafts as long as the page is open. */
export function memoryDrafts(): Drafts {
  const kept = new Map<string, string>()
  return {
    get: (place) => kept.get(place),
    put: (place, text) => {
      if (text === undefined) kept.delete(place)
      else kept.set(place, text)
    },
  }
}
