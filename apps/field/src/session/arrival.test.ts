import type { VisitEvent, VisitFile } from '@chargewright/visit'
import { describe, expect, test } from 'vitest'
import { arrivalOf } from './arrival.ts'

const note = (text: string): VisitEvent => ({ id: text, at: '2026-01-31T14:05:00Z', kind: 'note', text })
const file = (...texts: string[]): VisitFile => ({
  format: 'chargewright-visit',
  version: 1,
  id: 'v',
  events: texts.map(note),
})
const here = (...texts: string[]) => ({ events: texts.map(note) })

describe('a visit file that comes in', () => {
  test('[property] a visit not seen before is new', () => {
    expect(arrivalOf(file('a'), undefined)).toEqual({ kind: 'new' })
  })
  test('[property] the same or an older state brings nothing', () => {
    expect(arrivalOf(file('a', 'b'), here('a', 'b'))).toEqual({ kind: 'known' })
    expect(arrivalOf(file('a'), here('a', 'b'))).toEqual({ kind: 'known' })
  })
  test('[property] a state that goes on from ours brings what follows', () => {
    expect(arrivalOf(file('a', 'b', 'c'), here('a'))).toEqual({ kind: 'longer', events: [note('b'), note('c')] })
  })
  test('[property] a state that went another way is told from ours, even under the same id', () => {
    expect(arrivalOf(file('a', 'c'), here('a', 'b'))).toEqual({ kind: 'parted', at: 'c' })
    const changed = { ...file('a'), events: [{ ...note('a'), text: 'other' } as VisitEvent] }
    expect(arrivalOf(changed, here('a'))).toEqual({ kind: 'parted', at: 'a' })
  })
  test('[property] the order of the keys does not matter', () => {
    const { kind, ...rest } = note('a')
    const turned = { ...file(), events: [{ ...rest, kind } as VisitEvent] }
    expect(arrivalOf(turned, here('a'))).toEqual({ kind: 'known' })
  })
})
