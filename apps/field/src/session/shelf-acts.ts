import { fail, ok } from '@chargewright/quantity'
import { checkVisitFile, readVisitFile, TRADE_DEFAULT, type VisitEvent } from '@chargewright/visit'
import { foundSystems } from '../store/found-systems.ts'
import type { StoredSystem } from '../store/visit-store.ts'
import { carriedOver } from './carried.ts'
import type { Keeper } from './keeper.ts'
import type { Session } from './session.ts'

/** What can be done with whole systems and visits. */
export type ShelfActs = Pick<Session, 'start' | 'startSystem' | 'move' | 'takeIn' | 'setAside' | 'seed'>

interface Surroundings extends Pick<Keeper, 'shelf' | 'keep' | 'read'> {
  readonly head: () => { readonly id: string; readonly at: string }
  readonly newId: () => string
}

export function shelfActs({ shelf, keep, read, head, newId }: Surroundings): ShelfActs {
  return {
    start: async (system) => {
      const id = newId()
      const here = { origin: 'started-here', setAside: false } as const
      const at: StoredSystem = { id: system ?? newId(), ...here, events: [] }
      const known = shelf.value?.systems.find((one) => one.id === at.id)
      const events = carriedOver(known?.events ?? [], head)
      const added = await keep([
        { kind: 'add-system', system: at },
        { kind: 'add-visit', visit: { id, system: at.id, ...here, events } },
      ])
      return added.ok ? ok(id) : added
    },
    startSystem: async (stated, assumed) => {
      const id = newId()
      const events: VisitEvent[] = [
        { ...head(), kind: 'system-described', facts: stated },
        { ...head(), by: TRADE_DEFAULT, kind: 'system-described', facts: assumed },
      ]
      const checked = checkVisitFile({ format: 'chargewright-visit', version: 1, id, events })
      if (!checked.ok) return fail({ kind: 'problems', problems: checked.error })
      const said = checked.value.events.filter((event) => {
        return event.kind === 'system-described' && Object.keys(event.facts).length > 0
      })
      const system = { id, origin: 'started-here', setAside: false, events: said } as const
      const added = await keep([{ kind: 'add-system', system }])
      return added.ok ? ok(id) : added
    },
    move: async (visit, to) => {
      // Seldom needed, and so no part of what the first page loads.
      const { moving } = await import('./moving.ts')
      const here = await read()
      return here.ok ? keep(moving(visit, to, here.value, head())) : here
    },
    takeIn: async (json) => {
      const file = readVisitFile(json)
      if (!file.ok) return fail({ kind: 'problems', problems: file.error })
      const here = await read()
      if (!here.ok) return here
      const { takingIn } = await import('./taking-in.ts')
      const { changes, ...taken } = takingIn(file.value, here.value, head)
      const kept = await keep(changes)
      return kept.ok ? ok(taken) : kept
    },
    setAside: (ids, aside) => keep(ids.map((id) => ({ kind: 'set-aside', id, aside }))),
    seed: (files) => {
      const visits = files.map(({ id, about, events }) => {
        return { id, origin: 'demo', ...(about !== undefined && { about }), setAside: false, events } as const
      })
      const { systems, systemOf } = foundSystems(visits)
      return keep([
        ...systems.map((system) => ({ kind: 'add-system', system }) as const),
        ...visits.map(
          (visit) => ({ kind: 'add-visit', visit: { ...visit, system: systemOf.get(visit.id)! } }) as const,
        ),
      ])
    },
  }
}
