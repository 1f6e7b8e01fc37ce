import type { Problem, Quantity } from '@chargewright/quantity'
import type { CylinderWeighing, WeighedCylinder } from './cylinder.ts'
import type { EventOf, Fact, FactOf } from './event.ts'
import type { AnswerOf, ObservationId } from './observation-kind.ts'
import type { PressureTest } from './pressure-test.ts'
import type { ReadingId } from './reading-kind.ts'
import type { Supply } from './supply.ts'
import type { FigureId, SystemFacts } from './system.ts'
import type { VacuumTest } from './vacuum-test.ts'
import type { Gear } from './weighing-gear.ts'

/** A visit as its events make it. Derived anew from them every time; never stored. */
export interface Visit {
  readonly id: string
  readonly system: System
  /** The last standing reading of each kind. */
  readonly readings: Readonly<Partial<Record<ReadingId, Reading>>>
  /** Every standing reading in order, for trends and for steps. */
  readonly history: readonly Reading[]
  readonly observations: { readonly [Id in ObservationId]?: Observation<Id> }
  readonly moves: readonly Move[]
  /** The last standing description of each cylinder, in the order in which they came in. */
  readonly cylinders: readonly WeighedCylinder[]
  readonly adjustments: readonly Adjustment[]
  /** Waits that are over. */
  readonly waits: readonly Wait[]
  /** Waits that were begun; one that is over stands among the waits as well, as an entry of its own. */
  readonly begun: readonly BegunWait[]
  /** As it was told last. */
  readonly gear: Gear | undefined
  /** As it was measured last. */
  readonly supply: Supply | undefined
  readonly vacuumTests: readonly VacuumTest[]
  readonly pressureTests: readonly PressureTest[]
  readonly log: readonly LogEntry[]
  /** Entries that could not be read: they are kept in the log and left out of everything else. */
  readonly problems: readonly EntryProblem[]
  /** Entries that were read but lie outside what is plausible: used, and questioned. */
  readonly doubts: readonly EntryProblem[]
}

/** The system as described so far: the words and choices as given, the figures read. */
export interface System {
  readonly facts: SystemFacts
  readonly figures: Readonly<Partial<Record<FigureId, Figure>>>
}

/** What every folded item keeps of the event it came from. */
export interface Origin {
  readonly eventId: string
  readonly at: string
  /** Place in the order of events, from 0: greater means later. */
  readonly position: number
}

/** A figure of the system: as typed and in SI, taken as exact. */
export interface Figure extends Origin {
  readonly typed: string
  readonly quantity: Quantity
}

export interface Reading extends Origin {
  readonly what: ReadingId
  readonly typed: string
  /** SI with standard uncertainty; a pressure stays gauge or absolute as it was typed. */
  readonly quantity: Quantity
  readonly uncertaintySource: string
}

export interface Observation<Id extends ObservationId = ObservationId> extends Origin {
  readonly what: Id
  readonly answer: AnswerOf<Id>
}

export interface Move extends Origin {
  readonly fact: FactOf<'refrigerant-moved'>
  /** Mass with the scale's uncertainty, kg, never negative; `fact.direction` says which way. */
  readonly mass: Quantity<'mass'>
  /** Gross weights of the cylinder, where both were taken and can be read. */
  readonly weighing?: CylinderWeighing
}

export interface Adjustment extends Origin {
  readonly what: string
}

export interface Wait extends Origin {
  readonly purpose: FactOf<'wait'>['purpose']
  readonly duration: Quantity<'duration'>
}

export interface BegunWait extends Wait {
  /** By the clock of the device that began it, as an ISO timestamp. */
  readonly ends: string
}

/** One line of the log: what was entered, and what holds of it now. */
export interface LogEntry {
  readonly id: string
  /** Time of entry as the device told it. */
  readonly at: string
  readonly by?: string
  /** Place in the order of events, from 0. */
  readonly position: number
  readonly entered: Fact
  /** The fact that holds: as entered, as corrected, or nothing when it was withdrawn or its id was already used. */
  readonly holds: Fact | undefined
  /** Id of the correction that is in force. */
  readonly correctedBy?: string
  /** Every correction of this entry, and of its corrections, in order: in force or not. */
  readonly corrections: readonly EventOf<'correction'>[]
}

/** A problem with one entry, or a doubt about it, and the event it came from. */
export interface EntryProblem {
  readonly eventId: string
  readonly problem: Problem
}
