import type { VisitEvent } from '@chargewright/visit'
import { factsOf } from './facts-of.ts'
import type { StoredSystem, StoredVisit } from './visit-store.ts'

type Loose = Omit<StoredVisit, 'system'>

/** Systems for visits that name none, and the id of the system of each. */
export interface Found {
  readonly systems: readonly StoredSystem[]
  readonly systemOf: ReadonlyMap<string, string>
}

/**
 * Finds the systems of visits by the name that was entered in them: the same name is the same system, whatever its
 * capitals and spaces, and a visit without a name has a system of its own. Invented visits stay among themselves.
 *
 * The id of a system follows from its first visit, so that two devices that hold the same visits find the same system.
 */
export function foundSystems(visits: readonly Loose[]): Found {
  const groups = new Map<string, Loose[]>()
  for (const visit of visits) {
    const name = nameKey(factsOf(visit.events)?.name)
    const key = JSON.stringify(name === undefined ? ['visit', visit.id] : ['name', name, visit.origin === 'demo'])
    groups.set(key, [...(groups.get(key) ?? []), visit])
  }
  const founded = [...groups.values()].map((group) => ({ group, system: systemOf(group) }))
  return {
    systems: founded.map(({ system }) => system),
    systemOf: new Map(founded.flatMap(({ group, system }) => group.map((visit) => [visit.id, system.id] as const))),
  }
}

/** What makes two names the same; undefined for none. */
export function nameKey(name: string | undefined): string | undefined {
  const key = name?.trim().replace(/\s+/g, ' ').toLowerCase()
  return key === '' ? undefined : key
}

/** An id has at most 100 characters, and one is made of another here. */
const STEM = 80

function systemOf(group: readonly Loose[]): StoredSystem {
  const [first] = group
  const id = `${first!.id.slice(0, STEM)}-system`
  const facts = Object.assign({}, ...group.map(({ events }) => factsOf(events)))
  const last = group.flatMap(({ events }) => events).at(-1)
  const described: readonly VisitEvent[] =
    last && Object.keys(facts).length > 0 ? [{ id: `${id}-known`, at: last.at, kind: 'system-described', facts }] : []
  return { id, origin: first!.origin, setAside: group.every(({ setAside }) => setAside), events: described }
}
