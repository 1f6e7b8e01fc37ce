import type { Evidence, UnitPreference } from '@chargewright/quantity'
import { inWords } from '../session/in-words.ts'
import { sourceInWords } from '../words/source-in-words.ts'
import { t } from '../words/t.ts'

interface Props {
  readonly evidence: Evidence
  readonly units: UnitPreference
  /** Shows the entry that a leaf was typed in. */
  readonly showEntry: (eventId: string) => void
}

/** A reason that unfolds, level by level, down to what was typed in. */
export function EvidenceTree({ evidence, units, showEntry }: Props) {
  const { statement, source, eventId, from } = evidence
  const sentence = inWords(statement, units)
  if (from.length === 0 && source === undefined && eventId === undefined) return <p class="evidence-leaf">{sentence}</p>
  return (
    <details class="evidence">
      <summary>{sentence}</summary>
      <div class="evidence-below">
        {from.length > 0 && (
          <ul>
            {from.map((below, i) => (
              <li key={i}>
                <EvidenceTree evidence={below} units={units} showEntry={showEntry} />
              </li>
            ))}
          </ul>
        )}
        {source !== undefined && <p class="source">{sourceInWords(source)}</p>}
        {eventId !== undefined && (
          <button type="button" class="link" onClick={() => showEntry(eventId)}>
            {t('Show the entry in the log')}
          </button>
        )}
      </div>
    </details>
  )
}
