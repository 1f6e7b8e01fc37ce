import type { Cause, Memory } from '@chargewright/diagnosis'
import type { Evidence, Measure, Quantity, Statement } from '@chargewright/quantity'
import type { EntryProblem, FactOf, FigureId, ObservationId, ReadingId } from '@chargewright/visit'
import type { Limit } from './limit.ts'
import type { Measures } from './measures/measures.ts'

/** The ways to find the right charge, and their names in words. */
export const METHODS = {
  superheat: 'by compressor superheat',
  subcooling: 'by subcooling',
  'sight-glass': 'by sight glass under load',
  weight: 'by weight',
} as const

export type MethodId = keyof typeof METHODS

/** What an assessment can find, and its name in words. */
export const FINDINGS = {
  add: 'add',
  recover: 'recover',
  hold: 'hold',
  'not-the-charge': 'not the charge',
  'not-ready': 'not ready',
  'cannot-tell': 'cannot tell',
} as const

export type FindingKind = keyof typeof FINDINGS

/** Something that must hold before the method may speak. */
export interface Condition {
  readonly id:
    | 'not-overfilled'
    | 'settled'
    | 'equalised'
    | 'consistent'
    | 'outdoor-temperature'
    | 'return-air'
    | 'target'
    | 'airflow'
    | 'load'
    | 'system-empty'
    | 'tight-and-dry'
  /** `doubtful`: the method may speak, with a warning. `unknown`: nothing was entered that tells. */
  readonly state: 'met' | 'doubtful' | 'unmet' | 'unknown'
  readonly evidence: Evidence
  /** What to do about one that is not met or not known. */
  readonly remedy?: Step
  readonly next?: NextEntry
  /** What is entered again once the remedy is done. */
  readonly again?: readonly NextEntry[]
}

/** The entry that would tell more: which one, and why. */
export interface NextEntry {
  readonly entry:
    | { readonly kind: 'reading'; readonly what: ReadingId }
    | { readonly kind: 'observation'; readonly what: ObservationId }
    | { readonly kind: 'figure'; readonly what: FigureId }
    | { readonly kind: 'fact'; readonly what: 'refrigerant' | 'meteringDevice' | 'application' | 'makersChart' }
  readonly why: Statement
}

/** One thing to do; where it takes a time, a clock can be set for it. */
export interface Step extends Statement {
  readonly wait?: { readonly purpose: FactOf<'wait'>['purpose']; readonly duration: Quantity<'duration'> }
}

/** Another cause that could make the same readings. */
export interface LookAlike {
  readonly id: Cause | 'gas-or-poor-condenser-air' | 'weak-compressor-or-oversized-orifice' | 'unanswered-step' | 'leak'
  readonly label: Statement
  /**
   * `explains`: the readings speak for it. `excluded`: they speak against it. `open`: it cannot be told from the charge
   * with what was read, so no charge may be moved yet. `unlikely`: not excluded, but nothing speaks for it.
   */
  readonly verdict: 'explains' | 'excluded' | 'open' | 'unlikely'
  /** Seen or measured at the place itself; the others are read off a pattern of readings. */
  readonly seen?: true
  readonly evidence: Evidence
  readonly next?: NextEntry
}

/** A weighed step. */
export interface Dose {
  readonly direction: 'into-system' | 'out-of-system'
  readonly mass: Quantity<'mass'>
  /** Where the whole way to the target lies in nine of ten cases; known only where a twin sized the step. */
  readonly interval?: { readonly low: Quantity<'mass'>; readonly high: Quantity<'mass'> }
  /** Why no twin sized a step that is felt for by readings. */
  readonly withoutTwin?: Statement
  readonly phase: 'liquid' | 'vapour'
  readonly port: 'suction' | 'liquid-line' | 'receiver'
  readonly compressor: 'running' | 'stopped'
  /** What ends the step before all of it is in; the mass is then the most. */
  readonly until?: 'glass-clears'
  readonly evidence: Evidence
}

export interface Caution {
  readonly id: string
  readonly statement: Statement
  readonly source: string
}

/** An act of a visit that can hurt someone, the compressor or the air. */
export type Act = 'connect-gauge' | 'into-system' | 'out-of-system' | 'adjust-valve' | 'pressure-test' | 'evacuation'

/** The verdict, in one sentence and its reasons. */
export interface Finding {
  readonly kind: FindingKind
  readonly sentence: Statement
  readonly reasons: readonly Evidence[]
  /** What to do now, in order. */
  readonly steps: readonly Step[]
  readonly dose?: Dose
  /** For `not-the-charge`: the cause. */
  readonly cause?: LookAlike
  /** For `cannot-tell` and `not-ready`: what to enter next, the most telling first. */
  readonly next: readonly NextEntry[]
}

/** What a method aims at: a superheat, a subcooling or a mass, and how far off it still counts as met. */
export interface Target extends Measure {
  readonly tolerance: Limit
}

/** The answer to a visit: everything a screen, a prompt or a report shows. Derived, never edited. */
export interface Assessment {
  /** Version of the rules that gave this answer; kept with it, so that an old record gives its old answer. */
  readonly version: string
  readonly method: { readonly id: MethodId; readonly because: Evidence } | undefined
  readonly finding: Finding
  readonly conditions: readonly Condition[]
  readonly lookAlikes: readonly LookAlike[]
  /** For what the finding asks for. */
  readonly cautions: readonly Caution[]
  /** For each act that can be done at any time, whatever the finding: to stand where it is done. */
  readonly beside: Readonly<Record<Act, readonly Caution[]>>
  /** Derived values worth showing beside the readings they come from. */
  readonly measures: Measures
  readonly target?: Target
  /** What this visit taught about the system, where its causes were weighed: for the next visit. */
  readonly memory?: Memory
  readonly problems: readonly EntryProblem[]
  readonly doubts: readonly EntryProblem[]
}
