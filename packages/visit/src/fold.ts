import {
  fromSi,
  INCH_POUND,
  outOfRange,
  type Problem,
  parse,
  preferredUnit,
  type Quantity,
  STANDARD_ATMOSPHERE,
} from '@chargewright/quantity'
import type { FactOf, VisitEvent } from './event.ts'
import { measured } from './measured.ts'
import { type ObservationId, observationKind } from './observation-kind.ts'
import { type Accuracy, type ReadingId, readingKind } from './reading-kind.ts'
import { standing } from './standing.ts'
import { FIGURE_IDS, type FigureId, figureKind, type SystemFacts } from './system.ts'
import type {
  Adjustment,
  EntryProblem,
  Figure,
  Move,
  Observation,
  Origin,
  Reading,
  System,
  Visit,
  Wait,
} from './visit.ts'

// Charging scale: resolution 1 to 10 g, ±(0.05 to 0.1 % of reading + 1 count). REMEMBERED, common practice; the middle.
const PLAIN_SCALE: Accuracy = { limit: 0.005, fraction: 0.001, source: 'charging scale, common practice' }

/**
 * The visit that the events make. Entries that cannot be read are set aside with their problem; the rest goes on, so
 * that a half-filled form is a normal state and not an error.
 */
export function fold(visit: { readonly id: string; readonly events: readonly VisitEvent[] }): Visit {
  const { log, problems: idProblems } = standing(visit.events)
  const problems: EntryProblem[] = idProblems.map((problem) => ({ eventId: '', problem }))
  const doubts: EntryProblem[] = []
  const facts: Record<string, unknown> = {}
  const figures: Partial<Record<FigureId, Figure>> = {}
  const readings: Partial<Record<ReadingId, Reading>> = {}
  const history: Reading[] = []
  const observations: Partial<Record<ObservationId, Observation>> = {}
  const moves: Move[] = []
  const adjustments: Adjustment[] = []
  const waits: Wait[] = []

  for (const entry of log) {
    if (entry.holds === undefined) continue
    const origin: Origin = { eventId: entry.id, at: entry.at, position: entry.position }
    const note = (problem: Problem | undefined, list = problems) => {
      if (problem) list.push({ eventId: entry.id, problem })
    }
    const fact = entry.holds
    switch (fact.kind) {
      case 'system-described':
        Object.assign(facts, fact.facts)
        for (const id of FIGURE_IDS) readFigure(fact.facts, id, origin, figures, note)
        break
      case 'reading': {
        const reading = readReading(fact, origin, note)
        // One that cannot be read must not leave an older one standing in its place.
        delete readings[fact.what]
        if (!reading) break
        readings[fact.what] = reading
        history.push(reading)
        note(implausible(reading), doubts)
        break
      }
      case 'observation': {
        const { answers } = observationKind(fact.what)
        if (Object.hasOwn(answers, fact.answer))
          observations[fact.what] = { ...origin, what: fact.what, answer: fact.answer }
        else note({ kind: 'unknown', field: fact.what, value: fact.answer, accepted: Object.keys(answers).join(', ') })
        break
      }
      case 'refrigerant-moved': {
        const mass = measured(fact.mass, ['mass'], PLAIN_SCALE, fact.instrument, { field: 'mass moved' })
        if (mass.ok) moves.push({ ...origin, fact, mass: mass.value.quantity as Quantity<'mass'> })
        else note(mass.error)
        break
      }
      case 'adjustment':
        adjustments.push({ ...origin, what: fact.what })
        break
      case 'wait': {
        const duration = parse(fact.duration, 'duration', { field: 'wait' })
        if (duration.ok) waits.push({ ...origin, purpose: fact.purpose, duration: duration.value })
        else note(duration.error)
        break
      }
      case 'photo':
      case 'note':
        break
      default:
        fact satisfies never
    }
  }
  const system: System = { facts: facts as SystemFacts, figures }
  return { id: visit.id, system, readings, history, observations, moves, adjustments, waits, log, problems, doubts }
}

type Note = (problem: Problem | undefined) => void

function readFigure(
  facts: SystemFacts,
  id: FigureId,
  origin: Origin,
  figures: Partial<Record<FigureId, Figure>>,
  note: Note,
): void {
  const typed = facts[id]
  if (typed === undefined) return
  const read = parse(typed, figureKind(id).accepts, { field: figureKind(id).label })
  if (read.ok) figures[id] = { ...origin, typed, quantity: read.value }
  else {
    // A figure that cannot be read must not leave an older one standing in its place.
    delete figures[id]
    note(read.error)
  }
}

function readReading(fact: FactOf<'reading'>, origin: Origin, note: Note): Reading | undefined {
  const kind = readingKind(fact.what)
  const read = measured(fact.value, kind.accepts, kind.accuracy, fact.instrument, { field: kind.label })
  if (!read.ok) {
    note(read.error)
    return undefined
  }
  return { ...origin, what: fact.what, typed: fact.value, ...read.value }
}

function implausible(reading: Reading): Problem | undefined {
  const { label, plausible } = readingKind(reading.what)
  const [min, max] = plausible
  const { dimension, si } = reading.quantity
  const Pa = dimension === 'gauge pressure' ? si + STANDARD_ATMOSPHERE.si : si
  if (!outOfRange(label, Pa, min, max, '')) return undefined
  const shift = Pa - si
  const unit = preferredUnit(dimension, INCH_POUND)
  const shown = (value: number) => Number(fromSi(value - shift, unit).toPrecision(4))
  return { kind: 'out-of-range', field: label, value: shown(Pa), min: shown(min), max: shown(max), unit: unit.symbol }
}
