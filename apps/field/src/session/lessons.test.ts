import type { VisitEvent } from '@chargewright/visit'
import { describe, expect, test } from 'vitest'
import type { StoredVisit } from '../store/visit-store.ts'
import { forgettingsOf, lessonsBefore, visitsTo } from './lessons.ts'

const visit = (day: number, system = 's', setAside = false): StoredVisit => ({
  id: `v${day}`,
  system,
  origin: 'started-here',
  setAside,
  events: [{ id: `e${day}`, at: `2026-01-0${day}T08:00:00Z`, kind: 'note', text: 'arrived' }],
})
const visits = [1, 2, 3, 4].map((day) => visit(day))
const forgotten = (...ids: string[]) => ({ eventId: `forgot ${ids.at(-1)}`, visits: new Set(ids) })
const ids = (lessons: ReturnType<typeof lessonsBefore>) => lessons.visits.map(({ id }) => id)

describe('the lessons that a visit begins with', () => {
  test('[property] are those of the visits in sight to its system, the first one first, and never its own', () => {
    const all = [visit(3), visit(1), visit(2, 'other'), visit(4, 's', true), visit(5)]
    const own = visitsTo('s', all)
    expect(own.map(({ id }) => id)).toEqual(['v1', 'v3', 'v5'])
    expect(ids(lessonsBefore(own, []))).toEqual(['v1', 'v3', 'v5'])
    expect(ids(lessonsBefore(own, [], 'v3'))).toEqual(['v1'])
    expect(ids(lessonsBefore(own, [], 'v1'))).toEqual([])
  })

  test('[property] go back to the last that was forgotten; what was found among the forgotten stays', () => {
    const forgettings = [forgotten('v1'), forgotten('v1', 'v2')]
    expect(ids(lessonsBefore(visits, forgettings))).toEqual(['v3', 'v4'])
    expect(lessonsBefore(visits, forgettings, 'v3')).toEqual({ visits: [], forgotten: forgettings[1] })
    expect(ids(lessonsBefore(visits, [forgotten('v1', 'v2')], 'v2'))).toEqual(['v1'])
    expect(ids(lessonsBefore(visits, forgettings, 'v2'))).toEqual([])
  })

  test('[property] are in the order of their instants, whatever the zone they are told in', () => {
    const told = (id: string, at: string): StoredVisit => ({
      ...visit(1),
      id,
      events: [{ id, at, kind: 'note', text: 'arrived' }],
    })
    const all = [told('later', '2026-01-23T23:30:00-05:00'), told('first', '2026-01-24T01:00:00Z')]
    expect(visitsTo('s', all).map(({ id }) => id)).toEqual(['first', 'later'])
  })

  test('[limit] a visit that is not in sight begins with none', () => {
    expect(lessonsBefore(visits, [], 'elsewhere')).toEqual({ visits: [], forgotten: undefined })
  })
})

test('[property] what was forgotten is an entry of the system, and a withdrawal brings it back', () => {
  const at = '2026-01-31T14:05:00Z'
  const forget: VisitEvent = { id: 'f', at, kind: 'lessons-forgotten', visits: ['v1'] }
  expect(forgettingsOf({ id: 's', events: [forget] })).toEqual([{ eventId: 'f', visits: new Set(['v1']) }])
  const withdrawn = { id: 'c', at, kind: 'correction', corrects: 'f' } as const
  expect(forgettingsOf({ id: 's', events: [forget, withdrawn] })).toEqual([])
})
