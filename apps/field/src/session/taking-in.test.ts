import type { SystemStatement, VisitEvent, VisitFile } from '@chargewright/visit'
import { describe, expect, test } from 'vitest'
import { factsOf } from '../store/facts-of.ts'
import { memoryStore } from '../store/memory-store.ts'
import type { Shelf } from '../store/visit-store.ts'
import { takingIn } from './taking-in.ts'

const at = '2026-01-31T14:05:00Z'
const note = (text: string): VisitEvent => ({ id: text, at, kind: 'note', text })
const said = (id: string, facts: SystemStatement): VisitEvent => ({ id, at, kind: 'system-described', facts })
const file = (id: string, ...events: VisitEvent[]): VisitFile => ({
  format: 'chargewright-visit',
  version: 1,
  id,
  events,
})

describe('taking a visit file in', () => {
  test('[property] a first visit brings its system along; the next of that name joins it and adds what it knew not', async () => {
    const device = newDevice()
    await device.takeIn(file('a', said('a1', { name: 'Clinic', refrigerant: 'R-22' })))
    const shelf = await device.takeIn(
      file('b', said('b1', { name: 'clinic', refrigerant: 'R-407C', nameplateCharge: '6 lb' })),
    )
    expect(shelf.systems).toHaveLength(1)
    expect(shelf.visits.map(({ system }) => system)).toEqual(['a-system', 'a-system'])
    expect(factsOf(shelf.systems[0]!.events)).toEqual({ name: 'Clinic', refrigerant: 'R-22', nameplateCharge: '6 lb' })
  })

  test('[property] what a later state of a visit states of its system is handed on', async () => {
    const device = newDevice()
    const first = file('a', said('a1', { name: 'Clinic' }))
    await device.takeIn(first)
    const shelf = await device.takeIn({ ...first, events: [...first.events, said('a2', { refrigerant: 'R-22' })] })
    expect(shelf.visits).toHaveLength(1)
    expect(factsOf(shelf.systems[0]!.events)).toEqual({ name: 'Clinic', refrigerant: 'R-22' })
  })

  test('[property] a visit that parted stands beside ours at the same system, once, and goes on there', async () => {
    const device = newDevice()
    await device.takeIn(file('a', note('one'), note('ours')))
    const parted = file('a', note('one'), note('theirs'))
    expect(await device.arrival(parted)).toBe('parted')
    expect(await device.arrival(parted)).toBe('known')
    expect(await device.arrival({ ...parted, events: [...parted.events, note('more')] })).toBe('longer')
    const { visits } = await device.shelf()
    expect(visits.map(({ events }) => events.length)).toEqual([2, 3])
    expect(new Set(visits.map(({ system }) => system)).size).toBe(1)
  })

  test('[property] taking the same file in again brings a visit put aside back into sight, and nothing else', async () => {
    const device = newDevice()
    const shelf = await device.takeIn(file('a', note('one')))
    await device.store.write(['a', 'a-system'].map((id) => ({ kind: 'set-aside', id, aside: true })))
    expect(await device.takeIn(file('a', note('one')))).toEqual(shelf)
  })
})

function newDevice() {
  const store = memoryStore()
  let n = 0
  const shelf = async (): Promise<Shelf> => {
    const all = await store.all()
    return all.ok ? all.value : { systems: [], visits: [] }
  }
  const take = async (visit: VisitFile) => {
    const taken = takingIn(visit, await shelf(), () => ({ id: `new-${++n}`, at }))
    await store.write(taken.changes)
    return taken
  }
  return {
    store,
    shelf,
    arrival: async (visit: VisitFile) => (await take(visit)).arrival,
    takeIn: async (visit: VisitFile) => {
      await take(visit)
      return shelf()
    },
  }
}
