import type { Problem } from '@chargewright/quantity'
import type { LogEntry } from '@chargewright/visit'
import { useSignal } from '@preact/signals'
import { factInWords } from '../session/fact-in-words.ts'
import { problemInWords } from '../words/problem-in-words.ts'
import { t } from '../words/t.ts'
import type { CorrectableEntry } from './log-open.tsx'
import { logLineId } from './reveal.ts'
import { timeInWords } from './time-in-words.ts'
import { useLazy } from './use-lazy.ts'

interface Props extends CorrectableEntry {
  readonly problems: readonly Problem[]
}

/** One entry as it was typed, and what became of it. It opens to be corrected; nothing is ever erased. */
export function LogLine({ entry, problems, units, correct }: Props) {
  const { at, position, entered, correctedBy } = entry
  const open = useSignal(false)
  /** A correction was made here just now: the line says so until it is opened again. */
  const isTaken = useSignal(false)
  const Open = useLazy(open.value, async () => (await import('./log-open.tsx')).LogOpen)
  const { what, typed } = factInWords(entered)
  return (
    <li class="log-line">
      <details
        onToggle={(event) => {
          open.value = event.currentTarget.open
          if (open.value) isTaken.value = false
        }}
      >
        <summary id={logLineId(position)}>
          <span class="log-entry">
            <time dateTime={at}>{timeInWords(at)}</time>
            <span class="log-what">{what}</span>
            {correctedBy === undefined ? <q>{typed}</q> : <s>{typed}</s>}
            {becameOf(entry) !== undefined && <span class="log-now">{becameOf(entry)}</span>}
            {isTaken.value && <span role="status">{t('The correction was taken.')}</span>}
            {problems.length > 0 && <span class="doubt">{problems.map(problemInWords).join('; ')}</span>}
          </span>
        </summary>
        {open.value && Open && (
          <Open entry={entry} units={units} correct={correct} taken={() => (isTaken.value = true)} />
        )}
      </details>
    </li>
  )
}

/** What became of an entry, where it does not simply hold. */
function becameOf({ holds, correctedBy }: LogEntry): string | undefined {
  if (correctedBy === undefined) return holds ? undefined : t('not used: its id was used before')
  return holds ? t('now {0}', factInWords(holds).typed) : t('withdrawn')
}
