import { describe, expect, test } from 'vitest'
import { memoryMarks } from '../store/export-marks.ts'
import { factsOf } from '../store/facts-of.ts'
import { memoryStore } from '../store/memory-store.ts'
import { createArchive, isArchive } from './archive.ts'
import { archiveInWords } from './archive-in-words.ts'
import { createSession } from './session.ts'
import { settingsShelf } from './settings-shelf.ts'

const READING = { kind: 'reading', what: 'suction-pressure', value: '69 psig' } as const
const PHOTO = { type: 'image/jpeg', bytes: Uint8Array.from({ length: 70_000 }, (_, i) => i % 256) } as const

describe('everything as one file', () => {
  test('[property] what one device exports, another one holds after taking it in, byte by byte', async () => {
    const [here, there] = [await newDevice('a', { 'chargewright.units': 'metric' }), await newDevice('b')]
    await filled(here)
    const taken = await there.takeIn(await here.exported())
    expect(taken).toMatchObject({ systems: { new: 1 }, visits: { new: 1 }, photos: 1, settings: 1 })
    expect(await there.shelf()).toEqual(await here.shelf())
    const [file] = (await there.files()) as [string]
    expect((await there.session.photo(file))?.bytes).toEqual(PHOTO.bytes)
    expect(there.storage.get('chargewright.units')).toBe('metric')
  })

  test('[property] taken in again it changes nothing and says so', async () => {
    const here = await newDevice('a')
    await filled(here)
    const before = await here.shelf()
    const taken = await here.takeIn(await here.exported())
    expect(archiveInWords(taken)).toBe('Everything in this file is here already. Nothing has changed.')
    expect(await here.shelf()).toEqual(before)
  })

  test('[property] two devices that went on apart hold all of both after an exchange, each with its own facts', async () => {
    const [here, there] = [await newDevice('a'), await newDevice('b', { 'chargewright.theme': 'dim' })]
    const { system, visit } = await filled(here)
    await there.takeIn(await here.exported())
    await here.session.record(system, { kind: 'system-described', facts: { refrigerant: 'R-22', name: 'Here' } })
    await there.session.record(system, { kind: 'system-described', facts: { name: 'There', nameplateCharge: '6 lb' } })
    await here.session.record(visit, { ...READING, value: '70 psig' })
    await there.session.record(visit, { ...READING, value: '71 psig' })
    const taken = await there.takeIn(await here.exported())
    expect(taken).toMatchObject({ systems: { longer: 1 }, visits: { parted: 1 } })
    const { systems, visits } = await there.shelf()
    expect(factsOf(systems[0]!.events)).toMatchObject({ name: 'There', nameplateCharge: '6 lb', refrigerant: 'R-22' })
    expect(visits.map(({ events }) => (events.at(-1) as typeof READING).value)).toEqual(['71 psig', '70 psig'])
    expect(archiveInWords(await there.takeIn(await here.exported()))).toContain('Nothing has changed.')
    expect(there.storage.get('chargewright.theme')).toBe('dim')
  })

  test('[limit] a damaged file is refused with its place, and nothing changes', async () => {
    const [here, there] = [await newDevice('a'), await newDevice('b')]
    await filled(here)
    const json = await here.exported()
    const damaged = [json.slice(0, -90), json.replace('69 psig"', ''), json.replace(/"base64":"..../, '"base64":"*')]
    expect(isArchive(json)).toBe(true)
    for (const text of damaged) {
      const refused = await there.archive.takeIn(text)
      expect(refused).toMatchObject({ ok: false, error: { kind: 'problems' } })
      expect(await there.shelf()).toEqual({ systems: [], visits: [] })
    }
    expect(await there.archive.takeIn(damaged[2]!)).toMatchObject({
      error: { problems: [{ field: 'photos[0].base64' }] },
    })
  })

  test('[property] entries count as not exported until the file that holds them was handed over', async () => {
    const here = await newDevice('a')
    expect(here.archive.notExported.value).toBe(0)
    const { visit } = await filled(here)
    const entries = here.archive.notExported.value
    expect(entries).toBeGreaterThan(2)
    await here.archive.save()
    expect(here.archive.notExported.value).toBe(entries)
    await here.archive.saved()
    expect(here.archive.notExported.value).toBe(0)
    await here.session.record(visit, READING)
    expect(here.archive.notExported.value).toBe(1)
  })
})

test('[property] a visit that was exported by itself counts as exported, until it goes on', async () => {
  const { session, archive } = await newDevice('a')
  const system = value(await session.startSystem({ name: 'Clinic' }, {}))
  const visit = value(await session.start(system))
  await session.record(visit, READING)
  const before = archive.notExported.value
  const stored = session.visits.value![0]!
  await archive.visitSaved(stored)
  expect(archive.notExported.value).toBe(before - stored.events.length)
  await session.record(visit, READING)
  expect(archive.notExported.value).toBe(before - stored.events.length + 1)
})

async function newDevice(name: string, settings: Readonly<Record<string, string>> = {}) {
  const store = memoryStore()
  let n = 0
  const [now, newId] = [() => '2026-01-31T14:05:00Z', () => `${name}-${++n}`]
  const session = createSession({ store, now, newId })
  await session.refresh()
  const storage = new Map(Object.entries(settings))
  const shelf = {
    get length() {
      return storage.size
    },
    key: (i: number) => [...storage.keys()][i] ?? null,
    getItem: (key: string) => storage.get(key) ?? null,
    setItem: (key: string, value: string) => storage.set(key, value),
  } as unknown as Storage
  const archive = await createArchive({
    store,
    marks: memoryMarks(),
    settings: settingsShelf(() => shelf),
    session,
    head: () => ({ id: newId(), at: now() }),
  })
  return {
    session,
    archive,
    storage,
    shelf: async () => value(await store.all()),
    files: async () => value(await store.photoFiles()),
    exported: async () => String(value(await archive.save()).content),
    takeIn: async (json: string) => value(await archive.takeIn(json)),
  }
}

/** A system with a visit, a reading and a photo. */
async function filled({ session }: Awaited<ReturnType<typeof newDevice>>) {
  const system = value(await session.startSystem({ name: 'Clinic' }, { receiver: false }))
  const visit = value(await session.start(system))
  await session.record(visit, READING)
  await session.recordPhoto(system, 'Nameplate', PHOTO)
  return { system, visit }
}

function value<T>(result: { ok: true; value: T } | { ok: false; error: unknown }): T {
  if (!result.ok) throw new Error(JSON.stringify(result.error))
  return result.value
}
