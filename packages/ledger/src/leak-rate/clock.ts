import type { Statement } from '@chargewright/quantity'
import { type Day, dayText } from './calendar.ts'
import { isConfirmed, type Provision } from './provision.ts'

/** Something that has to be done by a day, or waits for something else before its days begin to count. */
export interface Clock {
  readonly what: Statement
  readonly due: { readonly kind: 'by'; readonly day: string } | { readonly kind: 'waits'; readonly for: Statement }
  readonly source: string
  readonly confirmed: boolean
}

/** @param due the last day, or what it waits for */
export function clock(what: Statement, due: Day | Statement, rule: Provision<unknown>): Clock {
  return {
    what,
    due: typeof due === 'number' ? { kind: 'by', day: dayText(due) } : { kind: 'waits', for: due },
    source: rule.source,
    confirmed: isConfirmed(rule),
  }
}
