import type { Caution } from '@chargewright/charging'
import type { UnitPreference } from '@chargewright/quantity'
import { inWords } from '../session/in-words.ts'

interface Props {
  readonly cautions: readonly Caution[]
  readonly units: UnitPreference
}

/** What can hurt someone or something in the act that is asked for. Never folded away. */
export function CautionList({ cautions, units }: Props) {
  if (cautions.length === 0) return null
  return (
    <section class="cautions" aria-labelledby="cautions">
      <h3 id="cautions">Take care</h3>
      <ul>
        {cautions.map(({ id, statement, source }) => (
          <li key={id}>
            {inWords(statement, units)} <span class="source">{source}</span>
          </li>
        ))}
      </ul>
    </section>
  )
}
