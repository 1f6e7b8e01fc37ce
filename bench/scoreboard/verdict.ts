import type { Case, Trouble } from '../population/case.ts'

/** One who reads a system and says what to do about it. */
export interface Judge {
  readonly name: string
  readonly judge: (seen: Seen) => Verdict
}

/** What a judge may look at: never the truth. */
export type Seen = Pick<Case, 'plate' | 'readings'> & Partial<Pick<Case, 'everything' | 'makersSuperheat_K'>>

export type Verdict = Stated & {
  /** The judge's own probability that it is right; absent where its method states none. */
  readonly sure?: number
}

type Stated =
  | {
      readonly kind: 'add' | 'recover'
      /** Refrigerant to the right charge, always positive, with its 90 % interval; may be left open. */
      readonly amount?: { readonly kg: number; readonly low_kg: number; readonly high_kg: number }
    }
  /** Sound: leave it as it is. */
  | { readonly kind: 'hold' }
  /** Not the charge: mend this first. */
  | { readonly kind: 'other'; readonly cause: OtherTrouble }
  /** Cannot tell; `next` is the reading or test that would help. */
  | { readonly kind: 'no-verdict'; readonly next?: string }

export type OtherTrouble = Exclude<Trouble, 'short-of-charge' | 'overcharged'>
