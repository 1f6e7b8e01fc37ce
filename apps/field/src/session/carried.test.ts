import { CARRIED_OVER, TRADE_DEFAULT } from '@chargewright/visit'
import { describe, expect, test } from 'vitest'
import { factsOf } from '../store/facts-of.ts'
import { memoryStore } from '../store/memory-store.ts'
import { assumedFacts } from './carried.ts'
import { createSession } from './session.ts'

describe('a system and its visits', () => {
  test('[property] a new visit begins with what is known, and what is only assumed stays marked', async () => {
    const { session, visit } = await newSystem({ name: 'Clinic', refrigerant: 'R-22' }, { receiver: false })
    const { events } = visit()
    expect(events.map(({ by }) => by)).toEqual([CARRIED_OVER, TRADE_DEFAULT])
    expect(factsOf(events)).toEqual({ name: 'Clinic', refrigerant: 'R-22', receiver: false })
    expect([...assumedFacts(events)]).toEqual(['receiver'])
    await session.undo(visit().id)
    expect(visit().events).toEqual(events)
  })

  test('[property] what a visit states, corrects or takes back is handed on to its system', async () => {
    const { session, visit, facts } = await newSystem({ name: 'Clinic' }, {})
    const { id } = visit()
    await session.record(id, { kind: 'system-described', facts: { nameplateCharge: '6 lb' } })
    expect(facts()).toEqual({ name: 'Clinic', nameplateCharge: '6 lb' })
    await session.record(id, { kind: 'system-described', facts: { nameplateCharge: '7 lb', refrigerant: 'R-22' } })
    expect(facts()).toEqual({ name: 'Clinic', nameplateCharge: '7 lb', refrigerant: 'R-22' })
    await session.undo(id)
    expect(facts()).toEqual({ name: 'Clinic', nameplateCharge: '6 lb' })
    await session.undo(id)
    expect(facts()).toEqual({ name: 'Clinic' })
  })

  test('[property] what was carried over and does not hold for this visit is no statement on the system', async () => {
    const { session, visit, facts } = await newSystem({ name: 'Clinic', refrigerant: 'R-22' }, {})
    await session.correct(visit().id, visit().events[0]!.id, undefined)
    expect(factsOf(visit().events)).toEqual({})
    expect(facts()).toEqual({ name: 'Clinic', refrigerant: 'R-22' })
  })

  test('[property] confirmed at the unit, a fact is no longer assumed; a reading hands nothing on', async () => {
    const { session, system, visit } = await newSystem({ name: 'Clinic' }, { receiver: false })
    const before = system().events
    await session.record(visit().id, { kind: 'reading', what: 'suction-pressure', value: '70 psig' })
    expect(system().events).toEqual(before)
    await session.record(system().id, { kind: 'system-described', facts: { receiver: false } })
    expect([...assumedFacts(system().events)]).toEqual([])
  })
})

async function newSystem(...described: Parameters<ReturnType<typeof createSession>['startSystem']>) {
  let n = 0
  const session = createSession({ store: memoryStore(), now: () => '2026-01-31T14:05:00Z', newId: () => `id-${++n}` })
  const started = await session.startSystem(...described)
  if (started.ok) await session.start(started.value)
  const system = () => session.systems.value![0]!
  return { session, system, visit: () => session.visits.value![0]!, facts: () => factsOf(system().events) }
}
