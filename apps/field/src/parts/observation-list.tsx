import { OBSERVATION_IDS, type ObservationId, observationKind, type Visit } from '@chargewright/visit'
import type { Kept } from '../session/session.ts'
import { ChoiceField } from './choice-field.tsx'

interface Props {
  readonly observations: Visit['observations']
  readonly record: (id: ObservationId, answer: string) => Kept
}

/** What is seen rather than measured. */
export function ObservationList({ observations, record }: Props) {
  return (
    <section class="observations" aria-labelledby="observations">
      <h2 id="observations">Seen</h2>
      {OBSERVATION_IDS.map((id) => {
        const { label, answers, tells } = observationKind(id)
        return (
          <ChoiceField
            key={id}
            id={`observation-${id}`}
            label={label}
            choices={answers}
            chosen={observations[id]?.answer}
            absent={`would tell ${tells}`}
            choose={(answer) => record(id, answer)}
          />
        )
      })}
    </section>
  )
}
