import { type Problem, parse } from '@chargewright/quantity'
import { takeCylinder, weighingOf } from './cylinder.ts'
import { doubtMove } from './doubt-move.ts'
import type { Fact, FactOf, VisitEvent } from './event.ts'
import { measured } from './measured.ts'
import { isAnswer, observationKind } from './observation-kind.ts'
import { instrumentSort } from './plain-instrument.ts'
import { beginPressureTest, continuePressureTest } from './pressure-test.ts'
import { doubtReading, readReading } from './reading.ts'
import { standing } from './standing.ts'
import { readSupply } from './supply.ts'
import { FIGURE_IDS, figureKind } from './system.ts'
import { beginVacuumTest, continueVacuumTest } from './vacuum-test.ts'
import type { Origin, System, Visit } from './visit.ts'
import { readGear } from './weighing-gear.ts'

/**
 * The visit that the events make, in the order in which they stand. Entries that cannot be read are set aside with
 * their problem; the rest goes on, so that a half-filled form is a normal state and not an error.
 */
export function fold({ id, events }: { readonly id: string; readonly events: readonly VisitEvent[] }): Visit {
  const { log, problems } = standing(events)
  const draft: Draft = {
    system: { facts: {}, figures: {} },
    readings: {},
    history: [],
    observations: {},
    moves: [],
    cylinders: [],
    adjustments: [],
    waits: [],
    begun: [],
    gear: undefined,
    supply: undefined,
    vacuumTests: [],
    pressureTests: [],
    problems: [...problems],
    doubts: [],
  }
  for (const { id, at, position, holds } of log) {
    if (holds) take(holds, { eventId: id, at, position }, draft)
  }
  // Last, because the nameplate may be entered after the move.
  for (const move of draft.moves) {
    const problem = doubtMove(move, draft.system)
    if (problem) draft.doubts.push({ eventId: move.eventId, problem })
  }
  return { id, log, ...draft }
}

/** The derived part of a visit, open for writing while it is made. */
type Draft = {
  -readonly [Part in Exclude<keyof Visit, 'id' | 'log' | 'system'>]: Writable<Visit[Part]>
} & { readonly system: { readonly [Part in keyof System]: Writable<System[Part]> } }

type Writable<T> = T extends readonly (infer Item)[] ? Item[] : { -readonly [Key in keyof T]: T[Key] }

function take(fact: Fact, origin: Origin, draft: Draft): void {
  const refuse = (problem: Problem) => draft.problems.push({ eventId: origin.eventId, problem })
  switch (fact.kind) {
    case 'system-described':
      describe(fact, origin, draft.system, refuse)
      return
    case 'reading': {
      // Removed first: one that cannot be read must not leave an older one standing in its place.
      delete draft.readings[fact.what]
      const reading = readReading(fact, origin)
      if (!reading.ok) return void refuse(reading.error)
      draft.readings[fact.what] = reading.value
      draft.history.push(reading.value)
      const problem = doubtReading(reading.value)
      if (problem) draft.doubts.push({ eventId: origin.eventId, problem })
      return
    }
    case 'observation': {
      const { what, answer } = fact
      delete draft.observations[what]
      const { label, answers } = observationKind(what)
      if (isAnswer(what, answer)) Object.assign(draft.observations, { [what]: { ...origin, what, answer } })
      else
        refuse({ kind: 'unknown', field: label, value: answer, accepted: `one of ${Object.keys(answers).join(', ')}` })
      return
    }
    case 'refrigerant-moved': {
      const mass = measured(
        fact.mass,
        ['mass'],
        instrumentSort('charging-scale').accuracy,
        fact.instrument,
        'Refrigerant moved',
      )
      if (mass.ok) draft.moves.push({ ...origin, fact, mass: mass.value.quantity, ...weighingOf(fact, refuse) })
      else refuse(mass.error)
      return
    }
    case 'cylinder-weighed':
      takeCylinder(fact, origin, draft.cylinders, refuse)
      return
    case 'weighing-gear':
      draft.gear = readGear(fact, origin, refuse)
      return
    case 'supply-measured':
      draft.supply = readSupply(fact, origin, refuse)
      return
    case 'adjustment':
      draft.adjustments.push({ ...origin, what: fact.what })
      return
    case 'wait': {
      const duration = parse(fact.duration, 'duration', { field: 'Wait' })
      if (!duration.ok) return void refuse(duration.error)
      const wait = { ...origin, purpose: fact.purpose, duration: duration.value }
      if (fact.ends === undefined) draft.waits.push(wait)
      else draft.begun.push({ ...wait, ends: fact.ends })
      return
    }
    case 'vacuum-test':
      draft.vacuumTests.push(beginVacuumTest(fact, origin, refuse))
      return
    case 'vacuum-reading':
    case 'vacuum-log':
      continueVacuumTest(fact, origin, draft.vacuumTests, refuse)
      return
    case 'pressure-test':
      draft.pressureTests.push(beginPressureTest(fact, origin))
      return
    case 'pressure-test-reading':
      continuePressureTest(fact, origin, draft.pressureTests, refuse)
      return
    case 'lessons-forgotten':
    case 'visit-moved':
    case 'photo':
    case 'note':
      return
    default:
      fact satisfies never
  }
}

/** Later statements replace earlier ones field by field; an empty one (null) takes the earlier one back. */
function describe(
  { facts }: FactOf<'system-described'>,
  origin: Origin,
  system: Draft['system'],
  refuse: (problem: Problem) => void,
): void {
  for (const [name, stated] of Object.entries(facts)) {
    if (stated === null) delete system.facts[name as keyof typeof facts]
    else Object.assign(system.facts, { [name]: stated })
  }
  for (const id of FIGURE_IDS) {
    const typed = facts[id]
    if (typed === undefined) continue
    delete system.figures[id]
    if (typed === null) continue
    const { label, accepts } = figureKind(id)
    const quantity = parse(typed, accepts, { field: label })
    if (quantity.ok) system.figures[id] = { ...origin, typed, quantity: quantity.value }
    else refuse(quantity.error)
  }
}
