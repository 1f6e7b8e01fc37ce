import type { Statement } from '@chargewright/quantity'

/** A statement and what it rests on; written where the comparison is made, so that nobody has to rebuild it. */
export interface Evidence {
  readonly statement: Statement
  /** Standard, paper or formula behind it, or the words *common practice*. */
  readonly source?: string
  readonly from: readonly Evidence[]
}

export function evidence(statement: Statement, source?: string, from: readonly Evidence[] = []): Evidence {
  return source === undefined ? { statement, from } : { statement, source, from }
}
