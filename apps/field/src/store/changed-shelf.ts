import { fail, ok, type Result } from '@chargewright/quantity'
import type { StoreProblem } from './store-problem.ts'
import type { Change, Shelf, StoredSystem, StoredVisit } from './visit-store.ts'

/** What a shelf holds after some changes. Logs that no change is about stay the very same objects. */
export function changedShelf(shelf: Shelf, changes: readonly Change[]): Result<Shelf, StoreProblem> {
  let { systems, visits } = shelf
  for (const change of changes) {
    switch (change.kind) {
      case 'add-system':
        systems = withAdded(systems, change.system)
        break
      case 'add-visit':
        visits = withAdded(visits, change.visit)
        break
      case 'append': {
        const { to, events } = change
        const append = <Log extends StoredLog>(log: Log): Log => ({ ...log, events: [...log.events, ...events] })
        if (holds(visits, to)) visits = replaced(visits, to, append)
        else if (holds(systems, to)) systems = replaced(systems, to, append)
        else return fail({ kind: 'unknown-log', detail: to })
        break
      }
      case 'set-aside': {
        const setAside = <Log extends StoredLog>(log: Log): Log => ({ ...log, setAside: change.aside })
        systems = replaced(systems, change.id, setAside)
        visits = replaced(visits, change.id, setAside)
        break
      }
      case 'keep-photo':
        break
      default:
        change satisfies never
    }
  }
  return ok({ systems, visits })
}

type StoredLog = StoredSystem | StoredVisit

const holds = (logs: readonly StoredLog[], id: string) => logs.some((log) => log.id === id)

/** What is here already is never replaced. */
function withAdded<Log extends StoredLog>(logs: readonly Log[], added: Log): readonly Log[] {
  return holds(logs, added.id) ? logs : [...logs, added]
}

function replaced<Log extends StoredLog>(logs: readonly Log[], id: string, by: (log: Log) => Log): readonly Log[] {
  return logs.map((log) => (log.id === id ? by(log) : log))
}
