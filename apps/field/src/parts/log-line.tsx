import { describeProblem, type Problem, type UnitPreference } from '@chargewright/quantity'
import type { EventOf, Fact, LogEntry } from '@chargewright/visit'
import { useSignal } from '@preact/signals'
import { type FactInWords, factInWords } from '../session/fact-in-words.ts'
import { instrumentInWords } from '../session/instruments.ts'
import { notKeptInWords } from '../session/not-kept.ts'
import type { Kept } from '../session/session.ts'
import { REDONE, UNDONE } from '../session/undo.ts'
import { CorrectionEditor } from './correction-editor.tsx'
import { CorrectionReason } from './correction-reason.tsx'
import { logLineId } from './reveal.ts'
import { timeInWords } from './time-in-words.ts'

interface Props {
  readonly entry: LogEntry
  readonly problems: readonly Problem[]
  readonly units: UnitPreference
  /** Corrects or, without a replacement, withdraws an event. */
  readonly correct: (eventId: string, replacement: Fact | undefined, reason: string | undefined) => Kept
}

/** One entry as it was typed, and what became of it. It opens to be corrected; nothing is ever erased. */
export function LogLine({ entry, problems, units, correct }: Props) {
  const { id, at, by, position, entered, holds, correctedBy, corrections } = entry
  const open = useSignal(false)
  const reason = useSignal('')
  const trouble = useSignal<string | undefined>(undefined)
  const act = async (eventId: string, replacement: Fact | undefined) => {
    const kept = await correct(eventId, replacement, reason.value.trim() || undefined)
    if (kept.ok) reason.value = ''
    trouble.value = kept.ok ? undefined : notKeptInWords(kept.error)
    return kept
  }
  const { what, typed } = factInWords(entered)
  return (
    <li class="log-line">
      <details onToggle={(event) => (open.value = event.currentTarget.open)}>
        <summary id={logLineId(position)}>
          <span class="log-entry">
            <time dateTime={at}>{timeInWords(at)}</time>
            <span class="log-what">{what}</span>
            {correctedBy === undefined ? <q>{typed}</q> : <s>{typed}</s>}
            {becameOf(entry) !== undefined && <span class="log-now">{becameOf(entry)}</span>}
            {problems.length > 0 && <span class="doubt">{problems.map(describeProblem).join('; ')}</span>}
          </span>
        </summary>
        {open.value && (
          <div class="log-open">
            {by !== undefined && <p>Entered by {by}</p>}
            {'instrument' in entered && entered.instrument && <p>Read with: {instrumentInWords(entered.instrument)}</p>}
            {corrections.map((correction) => (
              <p key={correction.id}>
                <time dateTime={correction.at}>{timeInWords(correction.at)}</time>{' '}
                {correction.replacement ? (
                  <>
                    corrected to <q>{line(factInWords(correction.replacement))}</q>
                  </>
                ) : (
                  withdrawal(correction, id)
                )}
                {isOwn(correction) && `; reason: ${correction.reason}`}
              </p>
            ))}
            {holds && <CorrectionReason reason={reason.value} give={(words) => (reason.value = words)} />}
            {holds && (
              <CorrectionEditor
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
                Withdraw this entry
              </button>
            ) : (
              correctedBy !== undefined && (
                <button type="button" class="key" onClick={() => void act(correctedBy, undefined)}>
                  Bring it back
                </button>
              )
            )}
          </div>
        )}
      </details>
    </li>
  )
}

/** What became of an entry, where it does not simply hold. */
function becameOf({ holds, correctedBy }: LogEntry): string | undefined {
  if (correctedBy === undefined) return holds ? undefined : 'not used: its id was used before'
  return holds ? `now ${factInWords(holds).typed}` : 'withdrawn'
}

const line = ({ what, typed }: FactInWords) => `${what}: ${typed}`

function withdrawal({ reason, corrects }: EventOf<'correction'>, entryId: string): string {
  if (reason === UNDONE || reason === REDONE) return reason
  return corrects === entryId ? 'withdrawn' : 'a correction taken back'
}

/** A correction with a reason that someone gave. */
const isOwn = ({ reason }: EventOf<'correction'>) => reason !== undefined && reason !== UNDONE && reason !== REDONE
