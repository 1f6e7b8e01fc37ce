import type { Assessment } from '@chargewright/charging'
import type { UnitPreference } from '@chargewright/quantity'
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

/** Problems and doubts, in words, each at the field that it is about. */
export interface Remarks {
  readonly readings: Readonly<Partial<Record<ReadingId, string>>>
  readonly facts: Readonly<Partial<Record<FactName, string>>>
  /** Those that belong to no field. */
  readonly others: readonly OtherRemark[]
}

/** A remark, and the entry of the log that it is about, where it is about one. */
export interface OtherRemark {
  readonly says: string
  readonly eventId: string | undefined
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
  const { readings, facts } = placesOf(visit)
  const remarkOn = (place: Place): string | undefined => {
    const problem = problems.find((one) => isAbout(one, place))
    if (problem) return t('Cannot be used. {0}', problemInUnits(problem.problem, units))
    const doubt = doubts.find((one) => isAbout(one, place))
    return doubt && doubtful(doubt, units)
  }
  const other = ({ eventId }: EntryProblem, says: string): OtherRemark => ({
    says,
    eventId: visit.log.some(({ id }) => id === eventId) ? eventId : undefined,
  })
  const remarksOn = <Name extends string>(places: ReadonlyMap<Name, Place>) =>
    Object.fromEntries(
      [...places].flatMap(([name, place]) => {
        const remark = remarkOn(place)
        return remark === undefined ? [] : [[name, remark]]
      }),
    ) as Partial<Record<Name, string>>
  const all = [...readings.values(), ...facts.values()]
  return {
    readings: remarksOn(readings),
    facts: remarksOn(facts),
    others: [
      ...problems
        .filter((one) => !all.some((place) => isAbout(one, place)))
        .map((one) => other(one, problemInWords(one.problem))),
      // The field of a mass is empty again once it is entered. A doubt about an older reading is past, with the reading.
      ...doubts
        .filter(({ eventId }) => visit.moves.some((move) => move.eventId === eventId))
        .map((one) => other(one, doubtful(one, units))),
    ],
  }
}

const doubtful = ({ problem }: EntryProblem, units: UnitPreference) =>
  t('Doubtful, kept all the same. {0}', problemInUnits(problem, units))

function placesOf({ log }: Visit) {
  const readings = new Map<ReadingId, Place>()
  const facts = new Map<FactName, Place>()
  for (const { id: eventId, holds } of log) {
    if (holds?.kind === 'reading') readings.set(holds.what, { label: readingKind(holds.what).label, eventId })
    if (holds?.kind !== 'system-described') continue
    for (const name of Object.keys(holds.facts) as FactName[]) facts.set(name, { label: factLabel(name), eventId })
  }
  return { readings, facts }
}

/** One entry can state many facts, so the name of the field counts too; a derived problem has that alone. */
function isAbout({ eventId, problem }: EntryProblem, place: Place): boolean {
  const named = problem.field.toLowerCase() === place.label.toLowerCase()
  return named && (eventId === place.eventId || eventId === '')
}
