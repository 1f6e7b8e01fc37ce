import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { PRACTICE_ADDRESS, practiceAddress, routeOf, visitAddress } from './route.ts'

describe('the address of a visit', () => {
  test('[property] leads back to the visit, whatever its id', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', minLength: 1 }), (id) => {
        expect(routeOf(visitAddress(id))).toEqual({ kind: 'visit', id })
      }),
      { seed: 20261125 },
    )
  })
  test('[property] the practice bench has an address, and each run on it', () => {
    expect(routeOf(PRACTICE_ADDRESS)).toEqual({ kind: 'practice' })
    expect(routeOf(practiceAddress('a/b'))).toEqual({ kind: 'practice', id: 'a/b' })
  })
  test('[limit] anything else is the start', () => {
    for (const hash of ['', '#', '#/', '#/visit/', '#/visit/%E0%A4%A']) expect(routeOf(hash)).toEqual({ kind: 'start' })
  })
})
