import { fold, type VisitEvent } from '@chargewright/visit'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { withPartsOf } from './with-parts-of.ts'

describe('data with the parts of earlier data', () => {
  test('[property] it says what it said, and is the earlier object where that says the same', () => {
    fc.assert(
      fc.property(fc.jsonValue(), fc.jsonValue(), (before, now) => {
        expect(withPartsOf(before, now)).toEqual(now)
        expect(withPartsOf(now, structuredClone(now))).toBe(now)
      }),
    )
  })

  test('[property] after one more entry the readings and lines before it are the very objects of before', () => {
    const [first, second] = [reading('a', 'suction-pressure', '70 psig'), reading('b', 'suction-temperature', '55 °F')]
    const before = fold({ id: 'v', events: [first] })
    const after = withPartsOf(before, fold({ id: 'v', events: [first, second] }))
    expect(after.readings['suction-pressure']).toBe(before.readings['suction-pressure'])
    expect(after.log[0]).toBe(before.log[0])
    expect(after.system).toBe(before.system)
    expect(after.readings).not.toBe(before.readings)
  })

  test('[limit] a field that is gone, and an array in the place of an object, are changes', () => {
    expect(withPartsOf({ a: 1, b: undefined }, { a: 1 })).toStrictEqual({ a: 1 })
    expect(withPartsOf({ a: 1 }, { b: undefined })).toStrictEqual({ b: undefined })
    expect(withPartsOf({ 0: 'a' }, ['a'])).toStrictEqual(['a'])
    expect(withPartsOf([1, 2], [1])).toStrictEqual([1])
  })

  test('[limit] what is no plain data is taken as it is', () => {
    const [before, now] = [new Uint8Array([1]), new Uint8Array([1])]
    expect(withPartsOf({ bytes: before }, { bytes: now }).bytes).toBe(now)
  })
})

function reading(id: string, what: 'suction-pressure' | 'suction-temperature', value: string): VisitEvent {
  return { id, at: '2026-01-31T14:05:00Z', kind: 'reading', what, value }
}
