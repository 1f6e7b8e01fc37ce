import type { Problem, UnitPreference } from '@chargewright/quantity'
import type { EntryProblem, Fact, LogEntry } from '@chargewright/visit'
import type { Kept } from '../session/session.ts'
import { t } from '../words/t.ts'
import { LogLine } from './log-line.tsx'

interface Props {
  readonly log: readonly LogEntry[]
  readonly problems: readonly EntryProblem[]
  readonly units: UnitPreference
  readonly correct: (eventId: string, replacement: Fact | undefined, reason: string | undefined) => Kept
}

/** Every entry as typed, the latest first. */
export function VisitLog({ log, problems, units, correct }: Props) {
  return (
    <section class="log" aria-labelledby="log">
      <h2 id="log">{t('Log')}</h2>
      {log.length === 0 && <p class="hint">{t('Nothing entered yet. Every entry will stand here as it was typed.')}</p>}
      <ol reversed>
        {log.toReversed().map((entry) => (
          <LogLine
            key={entry.position}
            entry={entry}
            problems={problemsOf(entry, problems)}
            units={units}
            correct={correct}
          />
        ))}
      </ol>
    </section>
  )
}

const NONE: readonly Problem[] = []

/** Of most entries there are none, and those lines are given the same nothing every time. */
function problemsOf({ id }: LogEntry, problems: readonly EntryProblem[]): readonly Problem[] {
  const own = problems.filter(({ eventId }) => eventId === id)
  return own.length === 0 ? NONE : own.map(({ problem }) => problem)
}
