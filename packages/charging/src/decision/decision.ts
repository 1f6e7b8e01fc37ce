import type { Cause, Observable } from '@chargewright/diagnosis'

/** What to do about a diagnosis. The one with the least expected loss. */
export type Decision =
  /** The whole way to the right charge, kg, with nine of ten systems between low and high. Weigh it in steps. */
  | (Weighed & { readonly kind: 'add' | 'recover' })
  /** The charge is right, and nothing else is wrong that shows. */
  | { readonly kind: 'hold'; readonly losses: Losses }
  /** Not the charge: find and mend this. Of two faults, the one to mend first; then read again. */
  | { readonly kind: 'other'; readonly cause: FaultElsewhere; readonly afterwards?: Cause; readonly losses: Losses }
  /** No act is worth its risk yet: this reading or test would tell most. */
  | { readonly kind: 'read'; readonly next: NextReading; readonly losses: Losses }
  /** Everything that would tell more was read, and still no act is worth its risk. */
  | { readonly kind: 'undecided'; readonly losses: Losses }
  /** Readings of this system cannot tell its charge, whatever they are. */
  | { readonly kind: 'refused'; readonly reason: 'receiver' }

export type FaultElsewhere = Exclude<Cause, 'sound' | 'short-of-charge' | 'overcharged'>

interface Weighed {
  readonly mass_kg: number
  readonly low_kg: number
  readonly high_kg: number
  /** Another fault that is likely beside the charge: mend it first, then read again. */
  readonly fixFirst?: FaultElsewhere
  readonly losses: Losses
}

/** Expected loss of each act, in units of one false name; for the record and the evidence. */
export type Losses = Readonly<Record<string, number>>

export interface NextReading {
  readonly observable: Observable
  /** Expected loss that it saves. */
  readonly saves: number
  /** Nothing may be said about the charge without it. */
  readonly required: boolean
}
