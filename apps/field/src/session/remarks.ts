import type { Assessment } from '@chargewright/charging'
import type { Problem, UnitPreference } from '@chargewright/quantity'
import {
  type EntryProblem,
  type FactName,
  factLabel,
  type ReadingId,
  readingKind,
  type Visit,
} from '@chargewright/visit'
import { problemInWords } from '../words/problem-in-words.ts'
import { t } from '../words/t.ts'
import { problemInUnits } from './problem-in-units.ts'

/** Problems and doubts, each beside the field that it is about. */
export interface Remarks {
  readonly onReading: (id: ReadingId) => string | undefined
  readonly onFact: (name: FactName) => string | undefined
  /** Those that belong to no field. */
  readonly others: readonly Problem[]
}

/** A field of the page, and the entry that last spoke of it. */
interface Place {
  readonly label: string
  readonly eventId: string
}

export function remarks(
  visit: Visit,
  { problems, doubts }: Pick<Assessment, 'problems' | 'doubts'>,
  units: UnitPreference,
): Remarks {
  const places = placesOf(visit)
  const at = (key: string): string | undefined => {
    const place = places.get(key)
    if (!place) return undefined
    const problem = problems.find((one) => isAbout(one, place))
    if (problem) return t('Cannot be used. {0}', problemInUnits(problem.problem, units))
    const doubt = doubts.find((one) => isAbout(one, place))
    return doubt && t('Doubtful, kept all the same. {0}', problemInWords(doubt.problem))
  }
  const all = [...places.values()]
  return {
    onReading: (id) => at(`reading ${id}`),
    onFact: (name) => at(`fact ${name}`),
    others: problems.filter((one) => !all.some((place) => isAbout(one, place))).map(({ problem }) => problem),
  }
}

function placesOf({ log }: Visit): ReadonlyMap<string, Place> {
  const places = new Map<string, Place>()
  for (const { id: eventId, holds } of log) {
    if (holds?.kind === 'reading')
      places.set(`reading ${holds.what}`, { label: readingKind(holds.what).label, eventId })
    if (holds?.kind !== 'system-described') continue
    for (const name of Object.keys(holds.facts) as FactName[]) {
      places.set(`fact ${name}`, { label: factLabel(name), eventId })
    }
  }
  return places
}

/** One entry can state many facts, so the name of the field counts too; a derived problem has that alone. */
function isAbout({ eventId, problem }: EntryProblem, place: Place): boolean {
  const named = problem.field.toLowerCase() === place.label.toLowerCase()
  return named && (eventId === place.eventId || eventId === '')
}
