import { fail } from '@chargewright/quantity'
import { describe, expect, test } from 'vitest'
import { memoryStore } from '../store/memory-store.ts'
import type { VisitStore } from '../store/visit-store.ts'
import { createSession } from './session.ts'

const READING = { kind: 'reading', what: 'suction-pressure', value: '110 psig' } as const

describe('a session', () => {
  test('[property] shows an entry once the store has it, with the time and the id it was given', async () => {
    const session = newSession()
    const started = await session.start()
    const id = started.ok ? started.value : ''
    const recording = session.record(id, READING)
    expect(session.keeping.value).toEqual({ kind: 'keeping' })
    expect((await recording).ok).toBe(true)
    expect(session.keeping.value).toEqual({ kind: 'kept' })
    expect(session.visits.value?.[0]?.events).toEqual([{ id: 'id-3', at: '2026-01-31T14:05:01Z', ...READING }])
  })

  test('[limit] what the record cannot hold is refused with the field, and the store is left alone', async () => {
    const session = newSession()
    await session.start()
    const kept = await session.record('id-1', { ...READING, value: 'x'.repeat(201) })
    expect(kept).toMatchObject({ ok: false, error: { kind: 'problems', problems: [{ field: 'events[0].value' }] } })
    expect(session.visits.value?.[0]?.events).toEqual([])
  })

  test('[limit] a store that fails is told, and again when it works', async () => {
    const store = memoryStore()
    let full = false
    const write: VisitStore['write'] = (changes) =>
      full ? Promise.resolve(fail({ kind: 'full', detail: 'no space' })) : store.write(changes)
    const session = newSession({ ...store, write })
    await session.start()
    full = true
    expect(await session.record('id-1', READING)).toMatchObject({ ok: false, error: { problem: { kind: 'full' } } })
    expect(session.keeping.value.kind).toBe('not-kept')
    full = false
    expect((await session.record('id-1', READING)).ok).toBe(true)
    expect(session.keeping.value.kind).toBe('kept')
  })

  test('[limit] an entry for a visit that is not here is refused', async () => {
    expect(await newSession().record('nobody', READING)).toMatchObject({
      error: { problem: { kind: 'unknown-log' } },
    })
  })

  test('[property] undo adds a correction and erases nothing', async () => {
    const session = newSession()
    await session.start()
    await session.record('id-1', READING)
    await session.undo('id-1')
    await session.undo('id-1')
    expect(session.visits.value?.[0]?.events.map(({ kind }) => kind)).toEqual(['reading', 'correction'])
  })
})

/** A session with a clock and ids that can be foretold. */
function newSession(store = memoryStore()) {
  let n = 0
  let seconds = 0
  return createSession({
    store,
    now: () => `2026-01-31T14:05:0${++seconds}Z`,
    newId: () => `id-${++n}`,
  })
}
