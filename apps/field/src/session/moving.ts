import { isTyped, MOVED_ALONG, type SystemStatement, TRADE_DEFAULT, type VisitEvent } from '@chargewright/visit'
import { factsOf } from '../store/facts-of.ts'
import type { Change, Shelf, StoredSystem } from '../store/visit-store.ts'
import { assumedFacts } from './carried.ts'
import { factsChanged } from './facts-changed.ts'
import { factsOnMove, only } from './facts-on-move.ts'
import { partOf } from './moved-along.ts'

/**
 * A visit goes to another system. It then begins with what that one is known to be; what a person stated at the visit
 * stays stated, goes on to the new system where that did not know it, and is taken back at the old one. An old one of
 * which nothing is left goes out of sight.
 */
export function moving(
  visitId: string,
  systemId: string,
  { systems, visits }: Shelf,
  head: { readonly id: string; readonly at: string },
): readonly Change[] {
  const visit = visits.find(({ id }) => id === visitId)
  const to = systems.find(({ id }) => id === systemId)
  if (!visit || !to || visit.system === to.id) return []
  const from = systems.find(({ id }) => id === visit.system)
  const begun = visit.events.filter((event) => !isTyped(event))
  const stated = factsChanged(begun, visit.events) ?? {}
  const facts = { from: factsIn(from), to: factsIn(to) }
  const { known, left, brought } = factsOnMove(factsOf(begun) ?? {}, stated, facts.from, facts.to)
  const assumed = assumedFacts(to.events)
  const describing = (part: Parameters<typeof partOf>[1], said: SystemStatement, by = MOVED_ALONG) =>
    Object.keys(said).length === 0
      ? []
      : [{ id: partOf(head.id, part), at: head.at, by, kind: 'system-described', facts: said } as const]
  const { name } = facts.to
  const move: VisitEvent = { ...head, kind: 'visit-moved', from: visit.system, to: to.id, ...(name && { name }) }
  const others = visits.filter(({ id, system, setAside }) => id !== visit.id && system === visit.system && !setAside)
  const remains = Object.values({ ...facts.from, ...left }).some((stays) => stays !== null)
  return [
    {
      kind: 'append',
      to: visit.id,
      events: [
        move,
        ...describing(
          'known',
          only(known, (fact) => !assumed.has(fact)),
        ),
        ...describing(
          'assumed',
          only(known, (fact) => assumed.has(fact)),
          TRADE_DEFAULT,
        ),
      ],
    },
    ...(from ? [{ kind: 'append', to: from.id, events: describing('left', left) } as const] : []),
    { kind: 'append', to: to.id, events: describing('brought', brought) },
    ...(from && others.length === 0 && !remains && isOnlyDescribed(from)
      ? [{ kind: 'set-aside', id: from.id, aside: true } as const]
      : []),
  ]
}

const factsIn = (system: StoredSystem | undefined) => (system && factsOf(system.events)) ?? {}

/** It holds no photo and no note of its own. */
const isOnlyDescribed = ({ events }: StoredSystem) =>
  events.every(({ kind }) => kind === 'system-described' || kind === 'correction')
