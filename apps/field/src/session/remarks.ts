import type { Assessment } from '@chargewright/charging'
import { describeProblem, type Problem } from '@chargewright/quantity'
import type { ReadingId, Visit } from '@chargewright/visit'
import type { FactName } from './fact-label.ts'

/** Problems and doubts, each beside the field that it is about. */
export interface Remarks {
  readonly onReading: (id: ReadingId) => string | undefined
  readonly onFact: (name: FactName) => string | undefined
  /** Those that belong to no field. */
  readonly others: readonly Problem[]
}

export function remarks(visit: Visit, { problems, doubts }: Pick<Assessment, 'problems' | 'doubts'>): Remarks {
  const places = new Map<string, string>()
  for (const { id, holds } of visit.log) {
    if (holds?.kind === 'reading') places.set(`reading ${holds.what}`, id)
    if (holds?.kind !== 'system-described') continue
    for (const name of Object.keys(holds.facts)) places.set(`fact ${name}`, id)
  }
  const placed = new Set(places.values())
  const at = (place: string): string | undefined => {
    const eventId = places.get(place)
    const problem = problems.find((one) => one.eventId === eventId)
    if (problem) return `Cannot be used. ${describeProblem(problem.problem)}`
    const doubt = doubts.find((one) => one.eventId === eventId)
    return doubt && `Doubtful, kept all the same. ${describeProblem(doubt.problem)}`
  }
  return {
    onReading: (id) => at(`reading ${id}`),
    onFact: (name) => at(`fact ${name}`),
    others: problems.filter(({ eventId }) => !placed.has(eventId)).map(({ problem }) => problem),
  }
}
