import type { Meaning } from './recording.ts'

/** What the columns of one kind of log were said to mean, by header; null where one is not used. */
export type Meanings = Readonly<Record<string, Meaning | null>>

const KEY = 'chargewright.columns'
/** Kinds of log that are remembered; the one used longest ago is forgotten first. */
const MOST_KINDS = 30

type Shelf = Pick<Storage, 'getItem' | 'setItem'>
type Kinds = readonly (readonly [head: string, Meanings])[]

/** Remembers on this device what columns mean, by the whole of their headers. A shelf that refuses costs the memory only. */
export function columnMemory(shelf: () => Shelf) {
  const all = (): Kinds => {
    try {
      const kept: unknown = JSON.parse(shelf().getItem(KEY) ?? '[]')
      return Array.isArray(kept) ? (kept as Kinds) : []
    } catch {
      return []
    }
  }
  return {
    recall: (headers: readonly string[]): Meanings | undefined =>
      all().find(([head]) => head === signature(headers))?.[1],
    remember: (headers: readonly string[], meanings: Meanings): void => {
      const head = signature(headers)
      const kinds = [[head, meanings] as const, ...all().filter(([other]) => other !== head)].slice(0, MOST_KINDS)
      try {
        shelf().setItem(KEY, JSON.stringify(kinds))
      } catch {
        // It will have to be said again next time.
      }
    },
  }
}

const signature = (headers: readonly string[]): string => JSON.stringify(headers)
