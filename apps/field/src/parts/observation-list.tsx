import {
  type Fact,
  OBSERVATION_IDS,
  type ObservationId,
  type Origin,
  observationKind,
  type Visit,
} from '@chargewright/visit'
import { isBefore } from '../session/before-change.ts'
import type { Kept } from '../session/session.ts'
import { t } from '../words/t.ts'
import { ChoiceField } from './choice-field.tsx'

interface Props {
  readonly observations: Visit['observations']
  /** The last change to the system. */
  readonly change: Origin | undefined
  /** What the finding asks for next. */
  readonly askedFor: ReadonlySet<string>
  readonly record: (fact: Fact) => Kept
}

function outdatedInWords(answered: Origin | undefined, change: Origin | undefined, isAskedFor: boolean) {
  if (isBefore(change, answered)) return t('answered before the last change; press it again if it still holds')
  return answered && isAskedFor ? t('to be answered again') : undefined
}

/** What is seen rather than measured: in front what was answered or is asked for, the rest folded behind it. */
export function ObservationList({ observations, change, askedFor, record }: Props) {
  const isUpFront = (id: ObservationId) => observations[id] !== undefined || askedFor.has(id)
  const field = (id: ObservationId) => {
    const { label, answers, tells } = observationKind(id)
    return (
      <ChoiceField
        key={id}
        id={`observation-${id}`}
        label={label}
        choices={answers}
        chosen={observations[id]?.answer}
        outdated={outdatedInWords(observations[id], change, askedFor.has(id))}
        absent={t('would tell {0}', t(tells))}
        choose={(answer) => record({ kind: 'observation', what: id, answer })}
      />
    )
  }
  const more = OBSERVATION_IDS.filter((id) => !isUpFront(id))
  return (
    <section class="observations" aria-labelledby="observations">
      <h2 id="observations">{t('What you see')}</h2>
      {OBSERVATION_IDS.filter(isUpFront).map(field)}
      {more.length > 0 && (
        <details class="group">
          <summary>
            <h3>{t('More to look at')}</h3>
            <span class="group-count">{more.length}</span>
          </summary>
          {more.map(field)}
        </details>
      )}
    </section>
  )
}
