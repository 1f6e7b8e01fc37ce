import { type Assessment, assess } from '@chargewright/charging'
import { findRefrigerant } from '@chargewright/refrigerant'
import { fold } from '@chargewright/visit'
import type { Assessed, VisitEvents } from './protocol.ts'

/** What earlier visits taught of a system, where they did. */
export type Known = Assessment['memory']

/** The answer to a visit, with what the visits before it taught. Asked again, it is the very same one. */
export function assessed({ id, events, earlier = [] }: VisitEvents): Assessed {
  return assessedKnowing({ id, events }, taughtBy(earlier))
}

/** What visits to one system taught together, the first one first; nothing where no causes could be weighed. */
export function taughtBy(visits: readonly VisitEvents[]): Known {
  return visits.reduce<Known>((known, visit) => taughtAfter(visit, known), undefined)
}

/** What is known after one more visit. One that this version cannot read teaches nothing. */
export function taughtAfter(visit: VisitEvents, known: Known): Known {
  try {
    return assessedKnowing(visit, known).assessment.memory ?? known
  } catch {
    return known
  }
}

/** Answers kept, the latest last: a picture is drawn of the visit that was just assessed. */
const answers = new Map<string, Assessed>()
/** More than the visits that a system usually has, because each begins with what those before it taught. */
const KEPT = 64

export function assessedKnowing({ id, events }: VisitEvents, known: Known): Assessed {
  const key = JSON.stringify([id, events, known])
  const answer = answers.get(key) ?? assessAnew({ id, events }, known)
  answers.delete(key)
  answers.set(key, answer)
  const [oldest] = answers.keys()
  if (answers.size > KEPT && oldest !== undefined) answers.delete(oldest)
  return answer
}

function assessAnew(events: VisitEvents, known: Known): Assessed {
  const visit = fold(events)
  const { refrigerant } = visit.system.facts
  const found = refrigerant === undefined ? undefined : findRefrigerant(refrigerant)
  return {
    assessment: assess(visit, [], known),
    learntFrom: known?.visits ?? 0,
    ...(found?.ok && { refrigerant: found.value.name }),
  }
}
