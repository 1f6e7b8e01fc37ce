import type { SystemStatement, VisitFile } from '@chargewright/visit'
import { factsOf } from '../store/facts-of.ts'
import { foundSystems, nameKey } from '../store/found-systems.ts'
import type { Change, Shelf, StoredSystem, StoredVisit } from '../store/visit-store.ts'
import { type Arrival, arrivalOf } from './arrival.ts'
import { factsChanged } from './facts-changed.ts'

export interface TakingIn {
  /** Id of the visit as it is kept here. */
  readonly id: string
  readonly arrival: Arrival['kind']
  readonly changes: readonly Change[]
}

/** What taking a visit file in changes here. The visit joins the system of its name, or brings one along. */
export function takingIn(
  file: VisitFile,
  shelf: Shelf,
  head: () => { readonly id: string; readonly at: string },
): TakingIn {
  const here = shelf.visits.find(({ id }) => id === file.id)
  const arrival = arrivalOf(file, here)
  switch (arrival.kind) {
    case 'new':
      return { id: file.id, arrival: 'new', changes: joining(file, shelf, head) }
    case 'known':
      return { id: file.id, arrival: 'known', changes: intoSight(here!) }
    case 'longer': {
      const facts = factsChanged(here!.events, file.events)
      const changes: readonly Change[] = [
        { kind: 'append', to: file.id, events: arrival.events },
        ...(facts ? [describing(here!.system, facts, head)] : []),
        ...intoSight(here!),
      ]
      return { id: file.id, arrival: 'longer', changes }
    }
    case 'parted': {
      // Named after the entry at which the two part, so that the same file, or a later state of it, is known again.
      const beside = { ...file, id: `${file.id.slice(0, STEM)}~${arrival.at.slice(0, STEM)}` }
      const taken = takingIn(beside, shelf, head)
      if (taken.arrival !== 'new') return taken
      const known = shelf.systems.find(({ id }) => id === here!.system)
      return { id: beside.id, arrival: 'parted', changes: joining(beside, shelf, head, known) }
    }
  }
}

/** An id has at most 100 characters, and one is made of two here. */
const STEM = 45

/** @param at the system of the visit; without it, the one of its name */
function joining(
  file: VisitFile,
  { systems }: Shelf,
  head: Parameters<typeof takingIn>[2],
  at?: StoredSystem,
): readonly Change[] {
  const { id, about, events } = file
  const visit = { id, origin: 'imported', ...(about !== undefined && { about }), setAside: false, events } as const
  const facts = factsOf(events) ?? {}
  const name = nameKey(facts.name)
  const isNamedSo = (system: StoredSystem) =>
    name !== undefined && system.origin !== 'demo' && nameKey(factsOf(system.events)?.name) === name
  const known = at ?? systems.find(isNamedSo)
  if (known) {
    const said = factsOf(known.events) ?? {}
    const lacking = Object.entries(facts).filter(([fact]) => !Object.hasOwn(said, fact))
    return [
      { kind: 'add-visit', visit: { ...visit, system: known.id } },
      ...(lacking.length > 0 ? [describing(known.id, Object.fromEntries(lacking) as SystemStatement, head)] : []),
      { kind: 'set-aside', id: known.id, aside: false },
    ]
  }
  const [system] = foundSystems([visit]).systems
  return [
    { kind: 'add-system', system: system! },
    { kind: 'add-visit', visit: { ...visit, system: system!.id } },
  ]
}

function describing(system: string, facts: SystemStatement, head: Parameters<typeof takingIn>[2]): Change {
  return { kind: 'append', to: system, events: [{ ...head(), kind: 'system-described', facts }] }
}

function intoSight({ id, system }: StoredVisit): readonly Change[] {
  return [id, system].map((each) => ({ kind: 'set-aside', id: each, aside: false }))
}
