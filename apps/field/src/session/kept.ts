import type { Problem, Result } from '@chargewright/quantity'
import type { StoreProblem } from '../store/store-problem.ts'

/** Why something was not kept. What was typed stays where it was typed. */
export type NotKept =
  | { readonly kind: 'problems'; readonly problems: readonly Problem[] }
  | { readonly kind: 'store'; readonly problem: StoreProblem }

export type Kept<T = void> = Promise<Result<T, NotKept>>

/** Whether what was entered has reached the disk. */
export type Keeping =
  | { readonly kind: 'kept' | 'keeping' }
  | { readonly kind: 'not-kept'; readonly problem: StoreProblem }
