import type { Caution } from '@chargewright/charging'
import type { UnitPreference } from '@chargewright/quantity'
import { inWords } from '../session/in-words.ts'
import { sourceInWords } from '../words/source-in-words.ts'
import { t } from '../words/t.ts'

interface Props {
  readonly cautions: readonly Caution[]
  readonly units: UnitPreference
}

/** The source that most have; it is said once. */
const HABIT = 'common practice'

/** What can hurt someone or something in an act, where the act is done. Never folded away. */
export function CautionList({ cautions, units }: Props) {
  if (cautions.length === 0) return null
  return (
    <div class="cautions">
      <h3>{t('Take care')}</h3>
      <ul>
        {cautions.map(({ id: about, statement, source }) => (
          <li key={about}>
            {inWords(statement, units)} {source !== HABIT && <span class="source">{sourceInWords(source)}</span>}
          </li>
        ))}
      </ul>
      {cautions.some(({ source }) => source === HABIT) && (
        <p class="source">{t('common practice, where no source is named')}</p>
      )}
    </div>
  )
}
