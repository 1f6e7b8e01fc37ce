import { fail, ok, type Problem, type Result } from '@chargewright/quantity'
import type { ArchiveFile, SystemStatement, VisitEvent } from '@chargewright/visit'
import { factsOf } from '../store/facts-of.ts'
import type { Change, Shelf, StoredSystem, StoredVisit } from '../store/visit-store.ts'
import { type Arrival, arrivalOf } from './arrival.ts'
import { fromBase64 } from './base64.ts'
import { factsChanged } from './facts-changed.ts'

/** How the logs of one sort arrived, counted. */
export type Arrivals = Readonly<Record<Arrival['kind'], number>>

export interface Merge {
  readonly changes: readonly Change[]
  readonly systems: Arrivals
  readonly visits: Arrivals
  readonly photos: number
}

type Head = () => { readonly id: string; readonly at: string }

interface Arrived {
  readonly arrival: Arrival['kind']
  readonly changes: readonly Change[]
}

/** An id has at most 100 characters, and one is made of two where a visit has parted from ours. */
const STEM = 45

/**
 * What taking an archive in changes here: what is not here is added, what went on elsewhere goes on here, and a visit
 * that went another way is put beside ours. Nothing that is here is changed.
 */
export function archiveIn(
  archive: ArchiveFile,
  shelf: Shelf,
  photosHere: readonly string[],
  head: Head,
): Result<Merge, readonly Problem[]> {
  const systems = archive.systems.map((system) => mergedSystem(system, shelf.systems, head))
  const visits = archive.visits.map((visit) => mergedVisit(visit, shelf.visits))
  const photos: Change[] = []
  for (const [i, { file, type, base64 }] of archive.photos.entries()) {
    const bytes = fromBase64(base64)
    const field = `photos[${i}].base64`
    if (!bytes) return fail([{ kind: 'unreadable', field, value: `${base64.slice(0, 20)}…`, accepted: 'base64' }])
    if (!photosHere.includes(file)) photos.push({ kind: 'keep-photo', photo: { file, type, bytes } })
  }
  return ok({
    changes: [...systems, ...visits].flatMap(({ changes }) => changes).concat(photos),
    systems: counted(systems),
    visits: counted(visits),
    photos: photos.length,
  })
}

function mergedVisit(visit: StoredVisit, here: readonly StoredVisit[]): Arrived {
  const ours = here.find(({ id }) => id === visit.id)
  const arrival = arrivalOf(visit, ours)
  switch (arrival.kind) {
    case 'new':
      return { arrival: 'new', changes: [{ kind: 'add-visit', visit }] }
    case 'known':
      return { arrival: 'known', changes: [] }
    case 'longer':
      return { arrival: 'longer', changes: [{ kind: 'append', to: visit.id, events: arrival.events }] }
    case 'parted': {
      // Named after the entry at which the two part, so that the same archive, or a later one, is known again.
      const id = `${visit.id.slice(0, STEM)}~${arrival.at.slice(0, STEM)}`
      const beside = mergedVisit({ ...visit, id }, here)
      return beside.arrival === 'new' ? { ...beside, arrival: 'parted' } : beside
    }
  }
}

/**
 * A system has one log on all devices: what the other one says of it is added to ours, and where the two contradict each
 * other what ours said is said once more, so that it goes on to hold.
 */
function mergedSystem(system: StoredSystem, here: readonly StoredSystem[], head: Head): Arrived {
  const ours = here.find(({ id }) => id === system.id)
  if (!ours) return { arrival: 'new', changes: [{ kind: 'add-system', system }] }
  const known = new Set(ours.events.map(({ id }) => id))
  const events = system.events.filter((event) => {
    return !known.has(event.id) && !(event.kind === 'correction' && known.has(event.corrects))
  })
  if (events.length === 0) return { arrival: 'known', changes: [] }
  const said = factsOf(ours.events) ?? {}
  const changed = factsChanged([...ours.events, ...events], ours.events) ?? {}
  const upheld = Object.fromEntries(Object.entries(changed).filter(([fact]) => Object.hasOwn(said, fact)))
  const again: readonly VisitEvent[] =
    Object.keys(upheld).length > 0 ? [{ ...head(), kind: 'system-described', facts: upheld as SystemStatement }] : []
  return { arrival: 'longer', changes: [{ kind: 'append', to: system.id, events: [...events, ...again] }] }
}

function counted(logs: readonly Arrived[]): Arrivals {
  const count = (kind: Arrival['kind']) => logs.filter(({ arrival }) => arrival === kind).length
  return { new: count('new'), known: count('known'), longer: count('longer'), parted: count('parted') }
}
