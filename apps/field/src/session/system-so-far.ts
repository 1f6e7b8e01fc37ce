import { type ApplianceUse, applianceUse } from '@chargewright/ledger'
import { factsOf } from '../store/facts-of.ts'
import type { StoredSystem, StoredVisit } from '../store/visit-store.ts'
import type { VisitEvents } from '../worker/protocol.ts'
import { visitsTo } from './lessons.ts'

/** A system with its visits up to one of them, the earliest first, and what it is used for. */
export interface SystemSoFar {
  readonly events: readonly VisitEvents[]
  readonly use: ApplianceUse
}

/** What the record of a visit can know of its system; of a visit that is put aside, that visit alone. */
export function systemSoFar(
  system: StoredSystem | undefined,
  visit: StoredVisit,
  all: readonly StoredVisit[],
): SystemSoFar {
  const visits = visitsTo(visit.system, all)
  const before = visits.slice(
    0,
    Math.max(
      0,
      visits.findIndex(({ id }) => id === visit.id),
    ),
  )
  const logs = [...(system ? [system] : []), ...before, visit]
  return {
    events: logs.map(({ id, events }) => ({ id, events })),
    use: applianceUse(factsOf(visit.events)?.application),
  }
}
