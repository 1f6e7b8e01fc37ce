import { FINDINGS } from '@chargewright/charging'
import type { UnitPreference } from '@chargewright/quantity'
import { useMemo } from 'preact/hooks'
import { quantityInWords } from '../session/in-words.ts'
import { type Forgetting, lessonsBefore } from '../session/lessons.ts'
import { visitAddress } from '../session/route.ts'
import type { StoredVisit } from '../store/visit-store.ts'
import { spoken } from '../words/speak.ts'
import { t } from '../words/t.ts'
import type { VisitOutcome } from '../worker/system-history.ts'
import { useAnswer } from '../worker/use-answer.ts'
import { EngineState } from './engine-state.tsx'
import { FindingMark } from './finding-mark.tsx'
import { PictureFigure } from './picture-figure.tsx'
import { dayInWords } from './time-in-words.ts'

interface Props {
  /** The first one first. */
  readonly visits: readonly StoredVisit[]
  readonly forgettings: readonly Forgetting[]
  readonly units: UnitPreference
}

/** The visits to a system, the latest on top, and how its measures went from one to the next. */
export function VisitHistory({ visits, forgettings, units }: Props) {
  const language = spoken.value
  const told = useMemo(() => {
    const beginsAnew = (id: string) => lessonsBefore(visits, forgettings, id).visits.length === 0
    return visits.map(({ id, events }) => ({ id, events, called: whenOf(events), beginsAnew: beginsAnew(id) }))
  }, [visits, forgettings, language])
  const asking = useAnswer('history', told, units, language)
  const outcomes = new Map(asking.answer?.outcomes.map((outcome) => [outcome.id, outcome]))
  return (
    <section class="history" aria-labelledby="history">
      <h2 id="history">{t('Visits')}</h2>
      {visits.length === 0 && (
        <p class="teach">
          {t(
            'No visit yet. From the second on, superheat, subcooling and what was weighed in are drawn here from visit to visit.',
          )}
        </p>
      )}
      {visits.length > 0 && <EngineState asking={asking} />}
      <ol class="rows" reversed>
        {visits.toReversed().map((visit, i) => (
          <li key={visit.id}>
            <VisitRow
              visit={visit}
              number={visits.length - i}
              outcome={outcomes.get(visit.id)}
              isAnswered={asking.answer !== undefined}
              units={units}
            />
          </li>
        ))}
      </ol>
      {asking.answer?.pictures.map((picture) => (
        <PictureFigure key={picture.title} picture={picture} />
      ))}
    </section>
  )
}

interface RowProps {
  readonly visit: StoredVisit
  readonly number: number
  readonly outcome: VisitOutcome | undefined
  /** Until then, nothing is said of what was measured. */
  readonly isAnswered: boolean
  readonly units: UnitPreference
}

function VisitRow({ visit, number, outcome, isAnswered, units }: RowProps) {
  const inWords = (name: string, value: VisitOutcome['superheat']) =>
    value ? [`${name} ${quantityInWords(value, units, true)}`] : []
  const measured = outcome && [
    ...inWords(t('superheat'), outcome.superheat),
    ...inWords(t('subcooling'), outcome.subcooling),
    ...inWords(t('weighed in'), outcome.weighed),
  ]
  return (
    <a class="row visit-row" href={visitAddress(visit.id)}>
      <span class="station-number">{number}</span>
      <strong class="visit-outcome">
        {outcome && (
          <>
            <FindingMark kind={outcome.finding} />
            {t(FINDINGS[outcome.finding])}
          </>
        )}
      </strong>
      <span class="row-aside">{whenOf(visit.events)}</span>
      <span class="row-about">{measured?.join(' · ') || (isAnswered ? t('nothing measured') : '\u00a0')}</span>
    </a>
  )
}

/** When a visit was: the time of its first entry. */
function whenOf(events: StoredVisit['events']): string {
  const [first] = events
  return first ? dayInWords(String(first.at)) : t('just begun')
}
