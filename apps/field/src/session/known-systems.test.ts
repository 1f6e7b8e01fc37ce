import type { SystemStatement, VisitEvent } from '@chargewright/visit'
import { describe, expect, test } from 'vitest'
import type { StoredSystem, StoredVisit } from '../store/visit-store.ts'
import { knownSystems, searched } from './known-systems.ts'

const at = (day: number) => `2026-01-${String(day).padStart(2, '0')}T14:05:00Z`
const system = (id: string, facts: SystemStatement, day = 1): StoredSystem => ({
  id,
  origin: 'started-here',
  setAside: false,
  events: [{ id: `${id}-e`, at: at(day), kind: 'system-described', facts }],
})
const visit = (id: string, of: string, events: readonly VisitEvent[] = [], setAside = false): StoredVisit => ({
  id,
  system: of,
  origin: 'started-here',
  setAside,
  events,
})
const note = (text: string, day: number): VisitEvent => ({ id: text, at: at(day), kind: 'note', text })

const SHELF = {
  systems: [
    system('clinic', { name: 'Clinic roof, unit 2', refrigerant: 'R-410A' }, 3),
    system('cafe', { name: 'Café, cellar', refrigerant: 'R-404A' }, 2),
    { ...system('old', { name: 'Old' }), setAside: true },
  ],
  visits: [visit('v1', 'cafe', [note('key at the bar', 9)]), visit('v2', 'cafe', [note('gone', 8)], true)],
}
const ids = (asked: string) => searched(knownSystems(SHELF), asked).map(({ system: { id } }) => id)

describe('the systems of this device', () => {
  test('[property] those in sight, by the latest entry in them or in a visit of theirs', () => {
    expect(knownSystems(SHELF).map(({ system: { id }, visits, lastEntry }) => [id, visits.length, lastEntry])).toEqual([
      ['cafe', 1, at(9)],
      ['clinic', 0, at(3)],
    ])
  })

  test('[property] the latest is so by its instant, whatever the zone it is told in', () => {
    const shelf = {
      systems: [system('east', {}), system('west', {})],
      visits: [
        visit('v1', 'east', [{ ...note('a', 1), at: '2026-01-24T01:00:00Z' }]),
        visit('v2', 'west', [{ ...note('b', 1), at: '2026-01-23T23:30:00-05:00' }]),
      ],
    }
    expect(knownSystems(shelf).map(({ system: { id } }) => id)).toEqual(['west', 'east'])
  })

  test.each([
    ['', ['cafe', 'clinic']],
    ['ROOF', ['clinic']],
    ['cafe', ['cafe']],
    ['r410a', ['clinic']],
    ['R-404A cellar', ['cafe']],
    ['bar', ['cafe']],
    ['gone', []],
    ['roof bar', []],
  ])('[property] asked for “%s” it finds %j', (asked, found) => {
    expect(ids(asked)).toEqual(found)
  })
})
