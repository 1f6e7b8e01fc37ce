import type { ProcedureStep } from '@chargewright/charging'
import type { UnitPreference } from '@chargewright/quantity'
import { inWords, quantityInWords } from '../session/in-words.ts'
import { t } from '../words/t.ts'

interface Props {
  readonly steps: readonly ProcedureStep[]
  readonly units: UnitPreference
}

/** A sequence in order: each act, how long to wait, when to go on and what stops it. */
export function Procedure({ steps, units }: Props) {
  if (steps.length === 0) return null
  return (
    <ol class="procedure" aria-label={t('The sequence')}>
      {steps.map(({ id, act, wait, goOnWhen, stops }, i) => (
        <li key={id}>
          <b aria-hidden="true">{i + 1}.</b>
          <div>
            <p>{inWords(act, units)}</p>
            {wait && <p class="hint">{t('wait {0}', quantityInWords(wait, units))}</p>}
            {goOnWhen && <p class="hint">{t('go on when: {0}', inWords(goOnWhen, units))}</p>}
            {stops.map(({ seen, after, means, instead }) => (
              <p key={seen.template} class="doubt">
                {after
                  ? t('Stop if after {0}: {1}.', quantityInWords(after, units), inWords(seen, units))
                  : t('Stop if: {0}.', inWords(seen, units))}{' '}
                {inWords(means, units)}: {inWords(instead, units)}
              </p>
            ))}
          </div>
        </li>
      ))}
    </ol>
  )
}
