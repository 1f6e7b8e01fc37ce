import type { Cause } from './cause.ts'
import type { Memory } from './memory.ts'
import type { Observable } from './observable.ts'

/**
 * Which cause explains the readings, and how well. Everything a decision and an explanation need; derived, never edited.
 * Charges are those of the newest set: what was weighed since the first is in them.
 */
export interface Diagnosis {
  /** Versions of the twin and of the calibration that gave this answer. */
  readonly twin: string
  readonly calibration: string
  /** Single causes, the most probable first. Their probabilities sum to 1. */
  readonly singles: readonly Single[]
  /** Pairs of faults, the most probable first, weighed against the singles: `pairShare` and its complement. */
  readonly pairs: readonly Pair[]
  /** Probability that two faults are at work together. */
  readonly pairShare: number
  /** Over all single causes. */
  readonly charge: ChargeEstimate
  readonly misfit: Misfit
  /** What was read, and what each single cause would have made of it; also of what was not read yet. */
  readonly readings: readonly ReadingOutlook[]
  /** For the next visit of this system. */
  readonly memory: Memory
}

export interface Single {
  readonly cause: Cause
  readonly probability: number
  /** In the unit of the cause's parameter; 0 for sound. */
  readonly severity: Spread
  /** Charge over the right charge minus 1, were this the cause. */
  readonly charge: ChargeEstimate
}

export interface Pair {
  readonly causes: readonly [Cause, Cause]
  readonly probability: number
  readonly severities: readonly [number, number]
  readonly charge: ChargeEstimate
}

export interface Spread {
  readonly mean: number
  readonly sd: number
}

/** Charge over the right charge, minus 1. */
export interface ChargeEstimate extends Spread {
  /** Nine of ten systems with these readings lie between. */
  readonly low: number
  readonly high: number
}

/** How badly even the best cause explains the readings. */
export interface Misfit {
  /** Squared Mahalanobis distance, and the number of figures it is taken over. */
  readonly distance: number
  readonly degrees: number
  /** Chance that a system which the best cause describes reads at least as far off. */
  readonly chance: number
  /** So small a chance that nothing we know explains this. */
  readonly unexplained: boolean
}

export interface ReadingOutlook {
  readonly observable: Observable
  /** Which set, counted from 0. */
  readonly set: number
  /** Undefined where it was not read. */
  readonly read: number | undefined
  /** What each single cause expects here, given all other readings. In the unit of the observable. */
  readonly expected: Readonly<Partial<Record<Cause, Spread>>>
}
