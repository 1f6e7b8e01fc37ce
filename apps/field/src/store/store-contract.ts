import type { VisitEvent } from '@chargewright/visit'
import type { Change, Photo, Shelf, StoredSystem, StoredVisit, VisitStore } from './visit-store.ts'

/** What every store must do, whatever it stands on: each case gets an empty store and throws where it fails. */
export const STORE_CONTRACT: Readonly<Record<string, (store: VisitStore) => Promise<void>>> = {
  'systems and visits come back as they were, with their events in order': async (store) => {
    const shelf = { systems: [system('s', 2)], visits: [visit('a', 3), visit('b', 12)] }
    await succeeds(store.write(added(shelf)))
    same(await value(store.all()), shelf)
  },
  'adding what is here changes nothing': async (store) => {
    await succeeds(store.write(added({ systems: [system('s', 1)], visits: [visit('a', 2)] })))
    const other = { systems: [system('s', 3)], visits: [{ ...visit('a', 5), origin: 'imported' as const }] }
    await succeeds(store.write(added(other)))
    same(await value(store.all()), { systems: [system('s', 1)], visits: [visit('a', 2)] })
  },
  'appended events follow those before, across 20 and more, in their own log': async (store) => {
    await succeeds(store.write(added({ systems: [system('s', 1)], visits: [visit('a', 2), visit('aa', 1)] })))
    for (let n = 2; n < 24; n++) await succeeds(store.write([append('a', n)]))
    await succeeds(store.write([append('s', 1)]))
    same(await value(store.all()), { systems: [system('s', 2)], visits: [visit('a', 24), visit('aa', 1)] })
  },
  'events appended at the same time are all kept, once': async (store) => {
    await succeeds(store.write(added({ systems: [], visits: [visit('a', 0)] })))
    await Promise.all(Array.from({ length: 50 }, (_, n) => succeeds(store.write([append('a', n)]))))
    const ids = (await value(store.all())).visits[0]?.events.map(({ id }) => id)
    same(ids?.toSorted(), ids && [...new Set(ids)].toSorted())
    same(ids?.length, 50)
  },
  'changes are made all or none': async (store) => {
    await succeeds(store.write(added({ systems: [], visits: [visit('a', 1)] })))
    const refused = await store.write([append('a', 1), { kind: 'keep-photo', photo: PHOTO }, append('nobody', 0)])
    same(refused.ok ? 'kept' : refused.error.kind, 'unknown-log')
    same(await value(store.all()), { systems: [], visits: [visit('a', 1)] })
    same(await value(store.photoFiles()), [])
  },
  'a visit or system set aside keeps all it holds, and comes back': async (store) => {
    await succeeds(store.write(added({ systems: [system('s', 1)], visits: [visit('a', 3)] })))
    await succeeds(store.write(['a', 's'].map((id) => ({ kind: 'set-aside', id, aside: true }))))
    const { systems, visits } = await value(store.all())
    same(systems, [{ ...system('s', 1), setAside: true }])
    same(visits, [{ ...visit('a', 3), setAside: true }])
    await succeeds(store.write([{ kind: 'set-aside', id: 'a', aside: false }]))
    same((await value(store.all())).visits, [visit('a', 3)])
  },
  'a photo comes back byte by byte, and one of the same name does not replace it': async (store) => {
    await succeeds(store.write([{ kind: 'keep-photo', photo: PHOTO }]))
    await succeeds(store.write([{ kind: 'keep-photo', photo: { ...PHOTO, bytes: new Uint8Array([9]) } }]))
    const kept = await value(store.photo('p.jpg'))
    same([kept?.file, kept?.type, [...(kept?.bytes ?? [])]], ['p.jpg', 'image/jpeg', [...PHOTO.bytes]])
    same(await value(store.photoFiles()), ['p.jpg'])
    same(await value(store.photo('other.jpg')), undefined)
  },
  'what was handed in can change without changing what is kept': async (store) => {
    const mine = { ...note('a', 0) }
    await succeeds(store.write(added({ systems: [], visits: [visit('a', 0)] })))
    await succeeds(store.write([{ kind: 'append', to: 'a', events: [mine] }]))
    Object.assign(mine, { id: 'spoilt' })
    same((await value(store.all())).visits, [visit('a', 1)])
  },
  'every write is told with its changes, until one stops listening': async (store) => {
    const heard: unknown[] = []
    const stop = store.watch((changes) => heard.push(changes))
    const adding = added({ systems: [], visits: [visit('a', 0)] })
    await succeeds(store.write(adding))
    await succeeds(store.write([append('a', 0)]))
    stop()
    await succeeds(store.write([{ kind: 'set-aside', id: 'a', aside: true }]))
    same(heard, [adding, [append('a', 0)]])
  },
}

const PHOTO: Photo = { file: 'p.jpg', type: 'image/jpeg', bytes: new Uint8Array([0, 255, 216, 1]) }

function added({ systems, visits }: Shelf): readonly Change[] {
  return [
    ...systems.map((one) => ({ kind: 'add-system', system: one }) as const),
    ...visits.map((one) => ({ kind: 'add-visit', visit: one }) as const),
  ]
}

function append(to: string, n: number): Change {
  return { kind: 'append', to, events: [note(to, n)] }
}

function system(id: string, events: number): StoredSystem {
  return { id, origin: 'started-here', setAside: false, events: Array.from({ length: events }, (_, n) => note(id, n)) }
}

function visit(id: string, events: number): StoredVisit {
  const { origin, setAside, events: noted } = system(id, events)
  return { id, system: 's', origin, setAside, events: noted }
}

function note(log: string, n: number): VisitEvent {
  return { id: `${log}-${n}`, at: '2026-01-31T14:05:00Z', kind: 'note', text: `note ${n}` }
}

async function value<T>(answer: Promise<{ ok: true; value: T } | { ok: false; error: unknown }>): Promise<T> {
  const result = await answer
  if (!result.ok) throw new Error(`store failed: ${JSON.stringify(result.error)}`)
  return result.value
}

async function succeeds(answer: ReturnType<VisitStore['write']>): Promise<void> {
  await value(answer)
}

function same(got: unknown, wanted: unknown): void {
  const [a, b] = [JSON.stringify(got), JSON.stringify(wanted)]
  if (a !== b) throw new Error(`got ${a}\nwanted ${b}`)
}
