import type { VisitEvent } from '@chargewright/visit'
import type { StoredVisit, VisitStore } from './visit-store.ts'

/** What every store must do, whatever it stands on: each case gets an empty store and throws where it fails. */
export const STORE_CONTRACT: Readonly<Record<string, (store: VisitStore) => Promise<void>>> = {
  'an added visit comes back as it was, with its events in order': async (store) => {
    await succeeds(store.add([visit('a', 3), visit('b', 12)]))
    same(await value(store.all()), [visit('a', 3), visit('b', 12)])
    same(await value(store.one('b')), visit('b', 12))
  },
  'a visit that is not here is nothing, not an error': async (store) => {
    same(await value(store.one('a')), undefined)
  },
  'adding a visit that is here changes nothing': async (store) => {
    await succeeds(store.add([visit('a', 2)]))
    await succeeds(store.add([{ ...visit('a', 5), origin: 'imported' }]))
    same(await value(store.all()), [visit('a', 2)])
  },
  'appended events follow those before, across 20 and more': async (store) => {
    await succeeds(store.add([visit('a', 2), visit('aa', 1), visit('b', 1)]))
    for (let n = 2; n < 24; n++) await succeeds(store.append('a', [note('a', n)]))
    same(await value(store.one('a')), visit('a', 24))
    same(await value(store.one('aa')), visit('aa', 1))
  },
  'events appended at the same time are all kept, once': async (store) => {
    await succeeds(store.add([visit('a', 0)]))
    await Promise.all(Array.from({ length: 50 }, (_, n) => succeeds(store.append('a', [note('a', n)]))))
    const ids = (await value(store.one('a')))?.events.map((e) => e.id)
    same(
      ids?.toSorted(),
      visit('a', 50)
        .events.map((e) => e.id)
        .toSorted(),
    )
  },
  'a visit that is not here takes no events': async (store) => {
    const refused = await store.append('a', [note('a', 0)])
    same(refused.ok ? 'kept' : refused.error.kind, 'unknown-visit')
    same(await value(store.all()), [])
  },
  'a visit set aside keeps all it holds, and comes back': async (store) => {
    await succeeds(store.add([visit('a', 3)]))
    await succeeds(store.setAside(['a'], true))
    same(await value(store.one('a')), { ...visit('a', 3), setAside: true })
    await succeeds(store.setAside(['a'], false))
    same(await value(store.one('a')), visit('a', 3))
  },
  'what was handed in can change without changing what is kept': async (store) => {
    const mine = { ...note('a', 0) }
    await succeeds(store.add([visit('a', 0)]))
    await succeeds(store.append('a', [mine]))
    Object.assign(mine, { id: 'spoilt' })
    same(await value(store.one('a')), visit('a', 1))
  },
  'every change is told, until one stops listening': async (store) => {
    let heard = 0
    const stop = store.watch(() => heard++)
    await succeeds(store.add([visit('a', 0)]))
    await succeeds(store.append('a', [note('a', 0)]))
    stop()
    await succeeds(store.setAside(['a'], true))
    same(heard, 2)
  },
}

function visit(id: string, events: number): StoredVisit {
  return { id, origin: 'started-here', setAside: false, events: Array.from({ length: events }, (_, n) => note(id, n)) }
}

function note(visitId: string, n: number): VisitEvent {
  return { id: `${visitId}-${n}`, at: '2026-01-31T14:05:00Z', kind: 'note', text: `note ${n}` }
}

async function value<T>(answer: Promise<{ ok: true; value: T } | { ok: false; error: unknown }>): Promise<T> {
  const result = await answer
  if (!result.ok) throw new Error(`store failed: ${JSON.stringify(result.error)}`)
  return result.value
}

async function succeeds(answer: ReturnType<VisitStore['add']>): Promise<void> {
  await value(answer)
}

function same(got: unknown, wanted: unknown): void {
  const [a, b] = [JSON.stringify(got), JSON.stringify(wanted)]
  if (a !== b) throw new Error(`got ${a}\nwanted ${b}`)
}
