import { type DBSchema, type IDBPDatabase, openDB } from 'idb'
import type { ChartKind, Tap } from './trace.ts'

/** A chart that is being traced, as far as it has come. */
export interface TraceDraft {
  readonly photo: Blob
  readonly kind: ChartKind
  readonly taps: readonly Tap[]
}

interface Tables extends DBSchema {
  readonly traces: { key: string; value: TraceDraft }
}

let opening: Promise<IDBPDatabase<Tables>> | undefined

const open = () => {
  opening ??= openDB<Tables>('chargewright-drafts', 1, {
    upgrade: (fresh) => void fresh.createObjectStore('traces'),
  })
  return opening
}

/** What is traced for a visit is kept on this device tap by tap; where the browser refuses, it lasts as long as the page. */
export async function keepDraft(visitId: string, draft: TraceDraft | undefined): Promise<void> {
  try {
    const database = await open()
    if (draft) await database.put('traces', draft, visitId)
    else await database.delete('traces', visitId)
  } catch {
    // The photo is still there to be taken again; nothing that was entered hangs on it.
  }
}

export async function keptDraft(visitId: string): Promise<TraceDraft | undefined> {
  try {
    return await (await open()).get('traces', visitId)
  } catch {
    return undefined
  }
}
