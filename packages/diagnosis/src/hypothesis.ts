import type { Health, System } from '@chargewright/cycle'
import type { CalibratedDevice } from './calibration.ts'
import type { Cause } from './cause.ts'

/** One cause: how it acts on the twin, how bad it may be, how common it is, and what a technician knows of it. */
export interface Hypothesis {
  readonly cause: Cause
  readonly devices: readonly CalibratedDevice[]
  /** In the words of the trade. */
  readonly label: string
  readonly does: string
  readonly lookAlikes: readonly Cause[]
  /** The act or reading that settles it. */
  readonly confirms: string
  readonly parameter: { readonly unit: string; readonly meaning: string }
  /** Severities in ascending order; each stands for its neighbourhood. Alike probable unless weights say otherwise. */
  readonly grid: readonly number[]
  /** Chance before anything is read, of one visit for a charge in doubt, over that of the others. */
  readonly prior: number
  readonly priorSource: string
  /** The system and its health with the cause at work. */
  readonly apply: (state: State, severity: number) => State
}

export interface State {
  readonly system: System
  readonly health: Health
}
