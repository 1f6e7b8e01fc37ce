import type { Problem, Quantity } from '@chargewright/quantity'
import type { FactOf } from './event.ts'
import type { ObservationId } from './observation-kind.ts'
import type { ReadingId } from './reading-kind.ts'
import type { LogEntry } from './standing.ts'
import type { FigureId, SystemFacts } from './system.ts'

/** What every folded item keeps of the event it came from. */
export interface Origin {
  readonly eventId: string
  readonly at: string
  /** Place in the order of events: greater means later. */
  readonly position: number
}

/** A figure of the system: as typed and in SI. */
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

export interface Observation extends Origin {
  readonly what: ObservationId
  readonly answer: string
}

export interface Move extends Origin {
  readonly fact: FactOf<'refrigerant-moved'>
  /** Mass with the scale's uncertainty, kg, always positive; `fact.direction` says which way. */
  readonly mass: Quantity<'mass'>
}

export interface Adjustment extends Origin {
  readonly what: string
}

export interface Wait extends Origin {
  readonly purpose: FactOf<'wait'>['purpose']
  readonly duration: Quantity<'duration'>
}

/** The system as described so far: the words and choices as given, the figures read. */
export interface System {
  readonly facts: SystemFacts
  readonly figures: Readonly<Partial<Record<FigureId, Figure>>>
}

/** A problem with one entry, or a doubt about it, and the event it came from. */
export interface EntryProblem {
  readonly eventId: string
  readonly problem: Problem
}

/** A visit as its events make it. Derived anew from them every time; never stored. */
export interface Visit {
  readonly id: string
  readonly system: System
  /** The last standing reading of each kind. */
  readonly readings: Readonly<Partial<Record<ReadingId, Reading>>>
  /** Every standing reading in order, for trends and for steps. */
  readonly history: readonly Reading[]
  readonly observations: Readonly<Partial<Record<ObservationId, Observation>>>
  readonly moves: readonly Move[]
  readonly adjustments: readonly Adjustment[]
  readonly waits: readonly Wait[]
  readonly log: readonly LogEntry[]
  /** Entries that could not be read: they are kept in the log and left out of everything else. */
  readonly problems: readonly EntryProblem[]
  /** Entries that were read but lie outside what is plausible: used, and questioned. */
  readonly doubts: readonly EntryProblem[]
}
