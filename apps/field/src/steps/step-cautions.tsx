import type { Statement, UnitPreference } from '@chargewright/quantity'
import { inWords } from '../session/in-words.ts'
import { t } from '../words/t.ts'

interface Props {
  readonly cautions: readonly { readonly id: string; readonly statement: Statement }[]
  readonly units: UnitPreference
}

/** What can hurt someone in this act, where the act is. Never folded away. */
export function StepCautions({ cautions, units }: Props) {
  return (
    <div class="cautions">
      <h4>{t('Take care')}</h4>
      <ul>
        {cautions.map(({ id, statement }) => (
          <li key={id}>{inWords(statement, units)}</li>
        ))}
      </ul>
    </div>
  )
}
