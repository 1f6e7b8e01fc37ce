import { fail, ok } from '@chargewright/quantity'
import { batch, computed, type ReadonlySignal, signal } from '@preact/signals'
import { changedShelf } from '../store/changed-shelf.ts'
import type { StoreProblem } from '../store/store-problem.ts'
import type { Change, Shelf, VisitStore } from '../store/visit-store.ts'
import type { Keeping, Kept } from './kept.ts'
import { placed } from './placed.ts'

/** What the store holds, as it is shown, and the one way in which it changes. */
export interface Keeper {
  /** Undefined until first read. */
  readonly shelf: ReadonlySignal<Shelf | undefined>
  /** What it will hold when the write that runs now is through: to work ahead with, never to be shown. */
  readonly ahead: ReadonlySignal<Shelf | undefined>
  readonly keeping: ReadonlySignal<Keeping>
  readonly refresh: () => Promise<void>
  /** What the store holds now, whatever is shown. */
  readonly read: () => Kept<Shelf>
  /** One write: counted while it runs, and shown before it is told as kept. */
  readonly keep: (changes: readonly Change[]) => Kept
}

export function createKeeper(store: VisitStore): Keeper {
  /** As it lies in the store: before visits are shown where they were moved to. */
  let held: Shelf | undefined
  let writesTold = 0
  const shelf = signal<Shelf | undefined>(undefined)
  const ahead = signal<Shelf | undefined>(undefined)
  const writing = signal(0)
  const failure = signal<StoreProblem | undefined>(undefined)

  async function read(): Kept<Shelf> {
    const all = await store.all()
    return all.ok ? ok(placed(all.value)) : fail({ kind: 'store', problem: all.error })
  }
  function show(now: Shelf): void {
    held = now
    batch(() => {
      shelf.value = placed(now)
      ahead.value = undefined
    })
  }
  async function refresh(): Promise<void> {
    const before = writesTold
    const all = await store.all()
    if (!all.ok) failure.value = all.error
    // What was written while it was read may be missing in it.
    else if (writesTold === before) show(all.value)
    else await refresh()
  }
  let refreshing = Promise.resolve()
  store.watch((changes) => {
    writesTold++
    const changed = held && changes && changedShelf(held, changes)
    if (changed?.ok) show(changed.value)
    else refreshing = refresh()
  })

  return {
    shelf,
    ahead,
    keeping: computed(() => {
      if (writing.value > 0) return { kind: 'keeping' }
      return failure.value ? { kind: 'not-kept', problem: failure.value } : { kind: 'kept' }
    }),
    refresh,
    read,
    keep: async (changes) => {
      writing.value++
      const hoped = held && changedShelf(held, changes)
      if (hoped?.ok) ahead.value = placed(hoped.value)
      const result = await store.write(changes)
      writing.value--
      ahead.value = undefined
      failure.value = result.ok ? undefined : result.error
      if (!result.ok) return fail({ kind: 'store', problem: result.error })
      await refreshing
      return result
    },
  }
}
