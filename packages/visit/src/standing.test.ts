import { describe, expect, test } from 'vitest'
import type { VisitEvent } from './event.ts'
import { standing } from './standing.ts'

const at = '2026-02-03T10:00:00Z'
const note = (id: string, text: string): VisitEvent => ({ id, at, kind: 'note', text })
const correct = (id: string, corrects: string, text: string): VisitEvent => ({
  id,
  at,
  kind: 'correction',
  corrects,
  replacement: { kind: 'note', text },
})
const withdraw = (id: string, corrects: string): VisitEvent => ({ id, at, kind: 'correction', corrects })

/** What holds of each fact: its text, or a dash where it was withdrawn. */
const held = (events: readonly VisitEvent[]) =>
  standing(events).log.map(({ holds }) => (holds?.kind === 'note' ? holds.text : '–'))

describe('what holds after corrections', () => {
  const a = note('a', 'first')
  const cases: readonly [situation: string, events: readonly VisitEvent[], expected: readonly string[]][] = [
    ['nothing corrected', [a, note('b', 'second')], ['first', 'second']],
    ['corrected', [a, correct('c', 'a', 'mended')], ['mended']],
    ['withdrawn', [a, withdraw('c', 'a')], ['–']],
    ['corrected twice: the later one', [a, correct('c', 'a', 'mended'), correct('d', 'a', 'again')], ['again']],
    ['correction withdrawn: as entered', [a, correct('c', 'a', 'mended'), withdraw('d', 'c')], ['first']],
    ['withdrawal withdrawn: as entered', [a, withdraw('c', 'a'), withdraw('d', 'c')], ['first']],
    [
      'last of two corrections withdrawn: the one before',
      [a, correct('c', 'a', 'mended'), correct('d', 'a', 'again'), withdraw('e', 'd')],
      ['mended'],
    ],
    [
      'undo undone: the correction again',
      [a, correct('c', 'a', 'mended'), withdraw('d', 'c'), withdraw('e', 'd')],
      ['mended'],
    ],
    ['correction corrected: its new words', [a, correct('c', 'a', 'mended'), correct('d', 'c', 'well')], ['well']],
    ['withdrawal replaced by words', [a, withdraw('c', 'a'), correct('d', 'c', 'well')], ['well']],
    [
      'correction corrected, and that withdrawn',
      [a, correct('c', 'a', 'mended'), correct('d', 'c', 'well'), withdraw('e', 'd')],
      ['mended'],
    ],
    ['corrected after withdrawal: the later one', [a, withdraw('c', 'a'), correct('d', 'a', 'back')], ['back']],
  ]
  test.each(cases)('[property] %s', (_, events, expected) => {
    expect(held(events)).toEqual(expected)
    expect(standing(events).problems).toEqual([])
  })
})

describe('the log', () => {
  const events = [
    { ...note('a', 'first'), by: 'the technician' },
    correct('c', 'a', 'mended'),
    note('b', 'second'),
    withdraw('d', 'c'),
    correct('e', 'a', 'again'),
  ]

  test('[property] keeps the fact as entered, its author and its place, beside what holds', () => {
    expect(standing(events).log[0]).toEqual({
      id: 'a',
      at,
      by: 'the technician',
      position: 0,
      entered: { kind: 'note', text: 'first' },
      holds: { kind: 'note', text: 'again' },
      correctedBy: 'e',
      corrections: [events[1], events[3], events[4]],
    })
    expect(standing(events).log[1]).toEqual({
      id: 'b',
      at,
      position: 2,
      entered: { kind: 'note', text: 'second' },
      holds: { kind: 'note', text: 'second' },
      corrections: [],
    })
  })
})

describe('events that name the wrong id', () => {
  test('[limit] a correction of an unknown id is a problem that names the event and the field', () => {
    expect(standing([note('a', 'first'), withdraw('c', 'zz')]).problems).toEqual([
      {
        eventId: 'c',
        problem: { kind: 'unknown', field: 'events[1].corrects', value: 'zz', accepted: 'the id of an earlier event' },
      },
    ])
  })

  test('[limit] a correction of itself or of a later event changes nothing and is a problem', () => {
    const events = [withdraw('c', 'a'), note('a', 'first'), withdraw('d', 'd')]
    expect(held(events)).toEqual(['first'])
    expect(standing(events).problems.map(({ problem }) => problem.field)).toEqual([
      'events[0].corrects',
      'events[2].corrects',
    ])
  })

  test('[property] withdrawing a correction of an unknown id takes its problem away', () => {
    expect(standing([withdraw('c', 'zz'), withdraw('d', 'c')]).problems).toEqual([])
  })

  test('[limit] an id used before: the first event holds, the second stays in the log and changes nothing', () => {
    const events = [note('a', 'first'), note('a', 'second'), correct('c', 'a', 'mended'), withdraw('c', 'a')]
    expect(held(events)).toEqual(['mended', '–'])
    expect(standing(events).log[1]!.entered).toEqual({ kind: 'note', text: 'second' })
    expect(standing(events).problems).toEqual([
      {
        eventId: 'a',
        problem: { kind: 'unreadable', field: 'events[1].id', value: 'a', accepted: 'an id not used before' },
      },
      {
        eventId: 'c',
        problem: { kind: 'unreadable', field: 'events[3].id', value: 'c', accepted: 'an id not used before' },
      },
    ])
  })

  test('[limit] ids spelled like members of every object are plain ids', () => {
    const events = [note('__proto__', 'first'), note('constructor', 'second'), withdraw('toString', 'constructor')]
    expect(held(events)).toEqual(['first', '–'])
  })
})
