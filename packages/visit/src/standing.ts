import type { EventOf, Fact, VisitEvent } from './event.ts'
import type { EntryProblem, LogEntry } from './visit.ts'

/**
 * Applies the corrections. Of several on one event the last one in force holds. A correction can itself be corrected:
 * withdrawing it brings back what held before, replacing it puts another fact in its place. Nothing is lost: every
 * fact stays in the log as it was entered, with all its corrections. An event whose id was used before changes nothing.
 */
export function standing(events: readonly VisitEvent[]): {
  readonly log: readonly LogEntry[]
  readonly problems: readonly EntryProblem[]
} {
  const places = firstPlaces(events)
  const isFirst = ({ id }: VisitEvent, position: number) => places.get(id) === position
  const isAimed = ({ corrects }: Correction, position: number) => (places.get(corrects) ?? position) < position
  const corrections = events.filter(
    (event, i): event is Correction => event.kind === 'correction' && isFirst(event, i) && isAimed(event, i),
  )
  const changes = changesInForce(corrections)
  const correctionsOf = correctionsByFact(corrections)

  const problems = events.flatMap((event, position) => {
    if (!isFirst(event, position)) return [idUsedBefore(event, position)]
    const aimless = event.kind === 'correction' && !isAimed(event, position)
    return aimless && !isWithdrawal(changes.get(event.id)) ? [nothingToCorrect(event, position)] : []
  })

  const log = events.flatMap((event, position): LogEntry[] => {
    if (event.kind === 'correction') return []
    const { id, at, by, ...entered } = event
    const entry = { id, at, ...(by === undefined ? {} : { by }), position, entered }
    if (!isFirst(event, position)) return [{ ...entry, holds: undefined, corrections: [] }]
    const change = changes.get(id)
    const now = change ? { holds: change.replacement, correctedBy: change.by } : { holds: entered }
    return [{ ...entry, ...now, corrections: correctionsOf.get(id) ?? [] }]
  })
  return { log, problems }
}

type Correction = EventOf<'correction'>

/** What a correction in force makes of its target: another fact, or nothing. */
interface Change {
  readonly by: string
  readonly replacement: Fact | undefined
}

const isWithdrawal = (change: Change | undefined) => change !== undefined && change.replacement === undefined

/** Where each id was used first. */
function firstPlaces(events: readonly VisitEvent[]): ReadonlyMap<string, number> {
  const places = new Map<string, number>()
  events.forEach(({ id }, position) => {
    if (!places.has(id)) places.set(id, position)
  })
  return places
}

/** The change in force on each corrected event, by its id. */
function changesInForce(corrections: readonly Correction[]): ReadonlyMap<string, Change> {
  const changes = new Map<string, Change>()
  // From the last one backwards, because only later corrections decide whether one is in force.
  for (const correction of corrections.toReversed()) {
    const own = changes.get(correction.id)
    if (isWithdrawal(own) || changes.has(correction.corrects)) continue
    changes.set(correction.corrects, own ?? { by: correction.id, replacement: correction.replacement })
  }
  return changes
}

/** The corrections of each fact in order, those of its corrections included. */
function correctionsByFact(corrections: readonly Correction[]): ReadonlyMap<string, readonly Correction[]> {
  const factOf = new Map<string, string>()
  const byFact = new Map<string, Correction[]>()
  for (const correction of corrections) {
    const fact = factOf.get(correction.corrects) ?? correction.corrects
    factOf.set(correction.id, fact)
    const earlier = byFact.get(fact)
    if (earlier) earlier.push(correction)
    else byFact.set(fact, [correction])
  }
  return byFact
}

function idUsedBefore({ id }: VisitEvent, position: number): EntryProblem {
  const field = `events[${position}].id`
  return { eventId: id, problem: { kind: 'unreadable', field, value: id, accepted: 'an id not used before' } }
}

function nothingToCorrect({ id, corrects }: Correction, position: number): EntryProblem {
  const field = `events[${position}].corrects`
  return { eventId: id, problem: { kind: 'unknown', field, value: corrects, accepted: 'the id of an earlier event' } }
}
