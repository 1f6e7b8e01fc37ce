import { fail, ok } from '@chargewright/quantity'
import { computed, type ReadonlySignal, signal } from '@preact/signals'
import type { StoreProblem } from '../store/store-problem.ts'
import type { Change, Shelf, VisitStore } from '../store/visit-store.ts'
import type { Keeping, Kept } from './kept.ts'
import { placed } from './placed.ts'

/** What the store holds, as it is shown, and the one way in which it changes. */
export interface Keeper {
  /** Undefined until first read. */
  readonly shelf: ReadonlySignal<Shelf | undefined>
  readonly keeping: ReadonlySignal<Keeping>
  readonly refresh: () => Promise<void>
  /** What the store holds now, whatever is shown. */
  readonly read: () => Kept<Shelf>
  /** One write: counted while it runs, and shown before it is told as kept. */
  readonly keep: (changes: readonly Change[]) => Kept
}

export function createKeeper(store: VisitStore): Keeper {
  const shelf = signal<Shelf | undefined>(undefined)
  const writing = signal(0)
  const failure = signal<StoreProblem | undefined>(undefined)

  async function read(): Kept<Shelf> {
    const all = await store.all()
    return all.ok ? ok(placed(all.value)) : fail({ kind: 'store', problem: all.error })
  }
  async function refresh(): Promise<void> {
    const all = await store.all()
    if (all.ok) shelf.value = placed(all.value)
    else failure.value = all.error
  }
  store.watch(() => void refresh())

  return {
    shelf,
    keeping: computed(() => {
      if (writing.value > 0) return { kind: 'keeping' }
      return failure.value ? { kind: 'not-kept', problem: failure.value } : { kind: 'kept' }
    }),
    refresh,
    read,
    keep: async (changes) => {
      writing.value++
      const result = await store.write(changes)
      writing.value--
      failure.value = result.ok ? undefined : result.error
      if (!result.ok) return fail({ kind: 'store', problem: result.error })
      await refresh()
      return result
    },
  }
}
