import type { Plant } from '../../population/case.ts'

/** A way to bring a system to its right charge. */
export interface Policy {
  readonly name: string
  /** Works at the plant until it stops by itself; undefined where it cannot begin. */
  readonly run: (plant: Plant) => Run | undefined
}

export interface Run {
  readonly ended: 'satisfied' | 'another trouble named' | 'no verdict' | 'too many steps' | 'no longer runs'
  /** Weighed steps, and those that did harm. */
  readonly steps: number
  readonly harmful: number
  /** First stated 90 % interval of what is missing, kg; negative to recover. */
  readonly first?: { readonly low_kg: number; readonly high_kg: number }
  /** Readings asked for beyond those of an ordinary visit. */
  readonly asked: number
}

/** A method that has not ended by then never will. */
export const MOST_STEPS = 12
