import { fold, type VisitEvent } from '@chargewright/visit'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { nextRedo, nextUndo, ownReason, REDONE, UNDONE } from './undo.ts'

const at = '2026-01-31T14:05:00Z'
const pressure = (n: number): VisitEvent => ({
  id: `e${n}`,
  at,
  kind: 'reading',
  what: 'suction-pressure',
  value: `${100 + n} psig`,
})

describe('undo', () => {
  test('[property] thirty acts are undone one by one down to the empty visit, each time to the state before', () => {
    const acts = fc.array(fc.constantFrom('read', 'correct', 'withdraw'), { minLength: 1, maxLength: 30 })
    fc.assert(
      fc.property(acts, (kinds) => {
        let events: readonly VisitEvent[] = []
        const states = [shown(events)]
        for (const [n, kind] of kinds.entries()) {
          const before = events.at(-1)
          const act: VisitEvent =
            kind === 'read' || !before
              ? pressure(n)
              : {
                  id: `e${n}`,
                  at,
                  kind: 'correction',
                  corrects: before.id,
                  ...(kind === 'correct' && { replacement: bare(n) }),
                }
          events = [...events, act]
          states.push(shown(events))
        }
        for (const state of states.slice(0, -1).toReversed()) {
          events = [...events, undo(events)]
          expect(shown(events)).toEqual(state)
        }
        expect(nextUndo(events)).toBeUndefined()
        for (const state of states.slice(1)) {
          events = [...events, redo(events)]
          expect(shown(events)).toEqual(state)
        }
        expect(nextRedo(events)).toBeUndefined()
        expect(shown([...events, undo(events)])).toEqual(states.at(-2))
      }),
      { seed: 20261125 },
    )
  })

  test('[property] after an undo and a new entry, the new entry is undone first', () => {
    const one = [pressure(0), pressure(1)]
    const two = [...one, undo(one), pressure(2)]
    expect(nextUndo(two)?.id).toBe('e2')
    expect(nextUndo([...two, undo(two)])?.id).toBe('e0')
  })

  test('[property] what was undone cannot be brought back over something new', () => {
    const one = [pressure(0), pressure(1)]
    const undone = [...one, undo(one)]
    expect(nextRedo(undone)?.act.id).toBe('e1')
    expect(nextRedo([...undone, pressure(2)])).toBeUndefined()
  })

  test('[limit] a reason in the same words is no undo', () => {
    const { kind, id } = pressure(0)
    const withdrawn: VisitEvent = { id: 'c', at, kind: 'correction', corrects: id, reason: ownReason(UNDONE) }
    expect(kind).toBe('reading')
    expect(nextUndo([pressure(0), withdrawn])?.id).toBe('c')
    expect(ownReason('misread')).toBe('misread')
  })

  test('[limit] an empty visit has nothing to undo', () => {
    expect(nextUndo([])).toBeUndefined()
  })
})

function undo(events: readonly VisitEvent[]): VisitEvent {
  return { id: `u${events.length}`, at, kind: 'correction', corrects: nextUndo(events)!.id, reason: UNDONE }
}

function redo(events: readonly VisitEvent[]): VisitEvent {
  return { id: `r${events.length}`, at, kind: 'correction', corrects: nextRedo(events)!.by.id, reason: REDONE }
}

function bare(n: number) {
  return { kind: 'reading', what: 'suction-pressure', value: `${200 + n} psig` } as const
}

function shown(events: readonly VisitEvent[]) {
  return fold({ id: 'v', events }).readings['suction-pressure']?.typed
}
