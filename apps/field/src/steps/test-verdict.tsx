import type { Evidence, Statement, UnitPreference } from '@chargewright/quantity'
import { EvidenceList } from '../parts/evidence-list.tsx'
import { inWords } from '../session/in-words.ts'
import { t } from '../words/t.ts'

interface Props {
  /** In a word or two. */
  readonly verdict: string
  readonly sentence: Statement
  /** What to do now, in order. */
  readonly steps: readonly Statement[]
  readonly reasons: readonly Evidence[]
  readonly units: UnitPreference
  readonly showEntry: (eventId: string) => void
}

/** What a test found: its word and sentence, what to do now, and why. */
export function TestVerdict({ verdict, sentence, steps, reasons, units, showEntry }: Props) {
  return (
    <div class="verdict">
      <p class="verdict-word" role="status">
        <strong>{t(verdict)}</strong>
      </p>
      <p class="verdict-sentence">{inWords(sentence, units)}</p>
      <ol class="steps" aria-label={t('What to do now')}>
        {steps.map((step, i) => (
          <li key={step.template}>
            <b aria-hidden="true">{i + 1}.</b>
            <span>{inWords(step, units)}</span>
          </li>
        ))}
      </ol>
      <EvidenceList evidence={reasons} units={units} showEntry={showEntry} />
    </div>
  )
}
