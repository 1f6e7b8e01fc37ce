import type { SystemFacts, VisitEvent } from '@chargewright/visit'
import { describe, expect, test } from 'vitest'
import { factsOf } from './facts-of.ts'
import { foundSystems } from './found-systems.ts'
import type { Origin } from './visit-store.ts'

const said = (id: string, facts: SystemFacts): VisitEvent => ({
  id,
  at: '2026-01-31T14:05:00Z',
  kind: 'system-described',
  facts,
})
const visit = (id: string, facts: SystemFacts, origin: Origin = 'started-here', setAside = false) => ({
  id,
  origin,
  setAside,
  events: Object.keys(facts).length > 0 ? [said(`${id}-1`, facts)] : [],
})

describe('systems found in visits that name none', () => {
  test('[property] the same name is the same system, whatever its capitals and spaces', () => {
    const { systems, systemOf } = foundSystems([
      visit('a', { name: 'Clinic roof, unit 2' }),
      visit('b', { name: 'Bakery' }),
      visit('c', { name: ' clinic  ROOF, unit 2' }),
    ])
    expect([...systemOf]).toEqual([
      ['a', 'a-system'],
      ['c', 'a-system'],
      ['b', 'b-system'],
    ])
    expect(systems.map(({ id }) => id)).toEqual(['a-system', 'b-system'])
  })

  test('[property] a system knows what its visits stated, the later over the earlier', () => {
    const { systems } = foundSystems([
      visit('a', { name: 'Clinic', refrigerant: 'R-22', nameplateCharge: '6 lb' }),
      visit('b', { name: 'Clinic', refrigerant: 'R-407C' }),
    ])
    expect(factsOf(systems[0]!.events)).toEqual({ name: 'Clinic', refrigerant: 'R-407C', nameplateCharge: '6 lb' })
  })

  test('[property] visits without a name have a system each; invented ones stay among themselves', () => {
    const { systemOf } = foundSystems([
      visit('a', {}),
      visit('b', { name: '  ' }),
      visit('c', { name: 'Clinic' }),
      visit('d', { name: 'Clinic' }, 'demo'),
    ])
    expect(new Set(systemOf.values()).size).toBe(4)
  })

  test('[property] a system is set aside only where all its visits are', () => {
    const { systems } = foundSystems([
      visit('a', { name: 'A' }, 'demo', true),
      visit('b', { name: 'B' }, 'started-here', true),
      visit('c', { name: 'B' }),
    ])
    expect(systems.map(({ setAside }) => setAside)).toEqual([true, false])
  })

  test('[limit] a visit that this version cannot read keeps a system of its own', () => {
    const events = [{ kind: 'of a later version' } as unknown as VisitEvent]
    const { systems, systemOf } = foundSystems([{ ...visit('a', {}), events }])
    expect(systemOf.get('a')).toBe('a-system')
    expect(systems[0]!.events).toEqual([])
  })
})
