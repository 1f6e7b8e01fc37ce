import type { Quantity } from './quantity.ts'
import type { Statement } from './statement.ts'

/**
 * A statement and what it rests on, down to what was typed in. It is written where the comparison is made; screens,
 * prompts and reports print it and never rebuild it.
 */
export interface Evidence {
  readonly statement: Statement
  /** Paper, standard or regulation behind a limit or a formula, or the words *common practice*. */
  readonly source?: string
  /** The event that was typed in, at the leaves of the tree. */
  readonly eventId?: string
  readonly from: readonly Evidence[]
}

export function evidence(statement: Statement, source?: string, from: readonly Evidence[] = []): Evidence {
  return source === undefined ? { statement, from } : { statement, source, from }
}

/** A derived value with the tree that leads to it. */
export interface Measure<Q extends Quantity = Quantity> {
  readonly quantity: Q
  readonly evidence: Evidence
}
