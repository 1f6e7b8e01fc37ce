import { fold, type SystemFacts, type VisitEvent } from '@chargewright/visit'

/** What a log states of its system; undefined where this version cannot read the log. */
export function factsOf(events: readonly VisitEvent[]): SystemFacts | undefined {
  try {
    return fold({ id: '', events }).system.facts
  } catch {
    return undefined
  }
}
