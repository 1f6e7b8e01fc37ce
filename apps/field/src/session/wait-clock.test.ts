import type { Condition } from '@chargewright/charging'
import { evidence, say } from '@chargewright/quantity'
import { type Fact, fold, lastChange } from '@chargewright/visit'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { steadyNow } from './steady-now.ts'
import { latestEntry, minutesTold, waitClock, waitState } from './wait-clock.ts'

const START = Date.parse('2026-06-01T14:00:00Z')
const MIN = 60_000
const at = (minutes: number) => new Date(START + minutes * MIN).toISOString()
const visitOf = (...facts: readonly (readonly [number, Fact])[]) =>
  fold({ id: 'v', events: facts.map(([minutes, fact], i) => ({ id: `e${i}`, at: at(minutes), ...fact })) })
const change: Fact = { kind: 'adjustment', what: 'stem a quarter turn in' }
const begun: Fact = { kind: 'wait', purpose: 'equalise', duration: '10 min', ends: at(12) }
const open = (id: Condition['id']): Condition => ({ id, state: 'unmet', evidence: evidence(say`no`) })

describe('the clock of a wait', () => {
  test('[property] runs from the entry that began it, whenever one looks', () => {
    const visit = visitOf([2, begun])
    const clock = waitClock(visit, undefined, [])!
    expect(clock).toMatchObject({ purpose: 'equalise', isBegun: true, duration: { si: 600 } })
    const latest = latestEntry(visit)
    expect(waitState(clock, START + 2 * MIN, latest)).toEqual({ kind: 'running', left_s: 600 })
    expect(waitState(clock, START + 11.5 * MIN, latest)).toEqual({ kind: 'running', left_s: 30 })
    expect(waitState(clock, START + 12 * MIN, latest)).toEqual({ kind: 'over' })
    expect(waitState(clock, START + 600 * MIN, latest)).toEqual({ kind: 'over' })
  })

  test('[property] without one that was begun, the last change to the system sets it, pressures first', () => {
    const visit = visitOf([0, change])
    const last = lastChange(visit)
    const rest = (...open: readonly Condition[]) => waitClock(visit, last, open)
    expect(rest(open('settled'))).toMatchObject({ purpose: 'settle', isBegun: false, ends: START + 15 * MIN })
    expect(rest(open('settled'), open('equalised'))).toMatchObject({ purpose: 'equalise', ends: START + 10 * MIN })
    expect(rest(open('airflow'))).toBeUndefined()
    expect(waitClock(visit, undefined, [open('settled')])).toBeUndefined()
  })

  test('[limit] a clock that was set back is told from one that runs', () => {
    const visit = visitOf([0, change], [2, begun], [9, { kind: 'note', text: 'still waiting' }])
    const clock = waitClock(visit, lastChange(visit), [])!
    const latest = latestEntry(visit)
    expect(waitState(clock, START - 60 * MIN, latest)).toEqual({ kind: 'set-back' })
    expect(waitState(clock, START + 5 * MIN, latest)).toEqual({ kind: 'set-back' })
    expect(waitState(clock, START + 8.5 * MIN, latest)).toMatchObject({ kind: 'running' })
    expect(waitState({ ...clock, ends: Number.NaN }, START, Number.NaN)).toEqual({ kind: 'set-back' })
  })

  test('[property] few times are told aloud, and each only once', () => {
    const told = Array.from({ length: 900 }, (_, i) => minutesTold(900 - i))
    expect([...new Set(told)]).toEqual([15, 10, 5, 1])
    expect(told).toEqual(told.toSorted((a, b) => b - a))
  })

  test('[property] while the page lives time never goes backwards, and never ahead of the device by itself', () => {
    const step = fc.record({ jump: fc.integer({ min: -1e7, max: 1e7 }), passed: fc.integer({ min: 0, max: 1e5 }) })
    fc.assert(
      fc.property(fc.array(step, { maxLength: 30 }), (steps) => {
        const device = { wall: START, passed: 0 }
        const now = steadyNow(
          () => device.wall,
          () => device.passed,
        )
        let before = now()
        for (const { jump, passed } of steps) {
          device.wall += passed + jump
          device.passed += passed
          const after = now()
          expect(after).toBeGreaterThanOrEqual(before + passed)
          expect(after).toBe(Math.max(device.wall, before + passed))
          before = after
        }
      }),
      { seed: 11 },
    )
  })
})
