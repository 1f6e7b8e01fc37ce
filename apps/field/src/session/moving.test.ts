import type { SystemStatement } from '@chargewright/visit'
import { describe, expect, test } from 'vitest'
import { factsOf } from '../store/facts-of.ts'
import { memoryStore } from '../store/memory-store.ts'
import { createSession } from './session.ts'

describe('a visit that was made at another system than was thought', () => {
  test('[property] begins with what that one is known to be, and keeps what was stated at it', async () => {
    const { session, facts, visit, other } = await atWrongSystem()
    await session.record(visit, { kind: 'system-described', facts: { elevation: '800 ft' } })
    await session.move(visit, other)
    expect(session.visits.value?.[0]?.system).toBe(other)
    expect(facts(visit)).toEqual({ name: 'Office', refrigerant: 'R-410A', elevation: '800 ft' })
    expect(facts(other)).toEqual({ name: 'Office', refrigerant: 'R-410A', elevation: '800 ft' })
    await session.record(visit, { kind: 'system-described', facts: { nameplateCharge: '6 lb' } })
    expect(facts(other)).toMatchObject({ nameplateCharge: '6 lb' })
  })

  test('[property] takes back at the old system what it had stated there, and nothing else', async () => {
    const { session, facts, visit, system, other } = await atWrongSystem()
    await session.record(visit, { kind: 'system-described', facts: { refrigerant: 'R-404A', elevation: '800 ft' } })
    await session.record(system, { kind: 'system-described', facts: { elevation: '900 ft' } })
    await session.move(visit, other)
    expect(facts(system)).toEqual({ name: 'Clinic', refrigerant: 'R-22', receiver: false, elevation: '900 ft' })
    expect(facts(other)).toMatchObject({ refrigerant: 'R-410A' })
  })

  test('[property] an undo puts everything back as it was, a redo as it was to be, over and over', async () => {
    const { session, facts, visit, system, other } = await atWrongSystem()
    await session.record(visit, { kind: 'system-described', facts: { elevation: '800 ft', refrigerant: 'R-404A' } })
    const seen = () => [session.visits.value?.[0]?.system, ...[visit, system, other].map(facts)]
    const before = seen()
    await session.move(visit, other)
    const after = seen()
    expect(after).not.toEqual(before)
    for (let i = 0; i < 2; i++) {
      await session.undo(visit)
      expect(seen()).toEqual(before)
      await session.redo(visit)
      expect(seen()).toEqual(after)
    }
    const move = session.visits.value?.[0]?.events.find(({ kind }) => kind === 'visit-moved')
    await session.correct(visit, move!.id, undefined, 'wrong again')
    expect(seen()).toEqual(before)
  })

  test('[property] a system that was begun by that visit alone goes out of sight, and comes back with an undo', async () => {
    const { session, other } = await atWrongSystem()
    const described = value(await session.start())
    await session.record(described, { kind: 'system-described', facts: { name: 'Ofice', refrigerant: 'R-410A' } })
    const own = session.visits.value!.find(({ id }) => id === described)!.system
    const isAside = () => session.systems.value?.find(({ id }) => id === own)?.setAside
    await session.move(described, other)
    expect(isAside()).toBe(true)
    await session.undo(described)
    expect(isAside()).toBe(false)
  })

  test('[limit] a move to where it is, or to a system that is not here, changes nothing', async () => {
    const { session, visit, system } = await atWrongSystem()
    const before = session.visits.value
    expect((await session.move(visit, system)).ok).toBe(true)
    expect((await session.move(visit, 'nowhere')).ok).toBe(true)
    expect(session.visits.value).toEqual(before)
  })
})

/** A visit to the clinic that was in truth made at the office. */
async function atWrongSystem() {
  let n = 0
  const session = createSession({
    store: memoryStore(),
    now: () => '2026-01-31T14:05:00Z',
    newId: () => `id-${++n}`,
  })
  await session.refresh()
  const begin = async (stated: SystemStatement, assumed: SystemStatement) =>
    value(await session.startSystem(stated, assumed))
  const system = await begin({ name: 'Clinic', refrigerant: 'R-22' }, { receiver: false })
  const other = await begin({ name: 'Office', refrigerant: 'R-410A' }, {})
  const visit = value(await session.start(system))
  const facts = (log: string) => {
    const logs = [...(session.systems.value ?? []), ...(session.visits.value ?? [])]
    return factsOf(logs.find(({ id }) => id === log)!.events)
  }
  return { session, facts, visit, system, other }
}

function value<T>(result: { ok: true; value: T } | { ok: false; error: unknown }): T {
  if (!result.ok) throw new Error(JSON.stringify(result.error))
  return result.value
}
