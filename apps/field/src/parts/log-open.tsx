import type { UnitPreference } from '@chargewright/quantity'
import type { EventOf, Fact, LogEntry } from '@chargewright/visit'
import { useSignal } from '@preact/signals'
import { type FactInWords, factInWords } from '../session/fact-in-words.ts'
import { instrumentInWords } from '../session/instruments.ts'
import { notKeptInWords } from '../session/not-kept.ts'
import type { Kept } from '../session/session.ts'
import { REDONE, UNDONE } from '../session/undo.ts'
import { t } from '../words/t.ts'
import { CorrectionEditor } from './correction-editor.tsx'
import { CorrectionReason } from './correction-reason.tsx'
import { foldLine } from './fold-line.ts'
import { timeInWords } from './time-in-words.ts'

export interface CorrectableEntry {
  readonly entry: LogEntry
  readonly units: UnitPreference
  /** Corrects or, without a replacement, withdraws an event. */
  readonly correct: (eventId: string, replacement: Fact | undefined, reason: string | undefined) => Kept
}

interface Props extends CorrectableEntry {
  /** Told when a correction was taken. */
  readonly taken: () => void
}

/** What became of an entry, and the form that corrects it. A part of its own, loaded when a line is opened. */
export function LogOpen({ entry, units, correct, taken }: Props) {
  const { id, by, position, entered, holds, correctedBy, corrections } = entry
  const reason = useSignal('')
  const trouble = useSignal<string | undefined>(undefined)
  const act = async (eventId: string, replacement: Fact | undefined) => {
    const kept = await correct(eventId, replacement, reason.value.trim() || undefined)
    if (kept.ok) reason.value = ''
    trouble.value = kept.ok ? undefined : notKeptInWords(kept.error)
    if (kept.ok && replacement) {
      taken()
      if (!isSeveral(replacement)) foldLine(position)
    }
    return kept
  }
  return (
    <div class="log-open">
      {by !== undefined && <p>{t('Entered by {0}', t(by))}</p>}
      {'instrument' in entered && entered.instrument && (
        <p>{t('Read with: {0}', instrumentInWords(entered.instrument))}</p>
      )}
      {corrections.map((correction) => (
        <p key={correction.id}>
          <time dateTime={correction.at}>{timeInWords(correction.at)}</time>{' '}
          {correction.replacement ? (
            <>
              {t('corrected to')} <q>{line(factInWords(correction.replacement))}</q>
            </>
          ) : (
            withdrawal(correction, id)
          )}
          {isOwn(correction) && t('; reason: {0}', t(correction.reason ?? ''))}
        </p>
      ))}
      {holds && <CorrectionReason reason={reason.value} give={(words) => (reason.value = words)} />}
      {holds && (
        <CorrectionEditor
          // Begun anew with what holds now, also after an undo; several fields are walked through one after the other.
          key={isSeveral(holds) || corrections.length}
          id={`correct-${position}`}
          fact={holds}
          units={units}
          correct={(fact) => act(id, fact)}
        />
      )}
      {trouble.value !== undefined && (
        <p class="trouble" role="alert">
          {trouble.value}
        </p>
      )}
      {holds ? (
        <button type="button" class="key" onClick={() => void act(id, undefined)}>
          {t('Withdraw this entry')}
        </button>
      ) : (
        correctedBy !== undefined && (
          <button type="button" class="key" onClick={() => void act(correctedBy, undefined)}>
            {t('Bring it back')}
          </button>
        )
      )}
    </div>
  )
}

/** One entry that states several facts has a field for each: who corrects one may have the next in hand. */
const isSeveral = (fact: Fact) => fact.kind === 'system-described' && Object.keys(fact.facts).length > 1

const line = ({ what, typed }: FactInWords) => `${what}: ${typed}`

function withdrawal({ reason, corrects }: EventOf<'correction'>, entryId: string): string {
  if (reason === UNDONE || reason === REDONE) return t(reason)

  return corrects === entryId ? t('withdrawn') : t('a correction taken back')
}

/** A correction with a reason that someone gave. */
const isOwn = ({ reason }: EventOf<'correction'>) => reason !== undefined && reason !== UNDONE && reason !== REDONE
