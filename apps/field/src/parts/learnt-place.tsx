import { useSignal } from '@preact/signals'
import type { Lessons } from '../session/lessons.ts'
import { notKeptInWords } from '../session/not-kept.ts'
import type { Kept, Session } from '../session/session.ts'
import { t } from '../words/t.ts'
import { Trouble } from './trouble.tsx'

interface Props {
  /** Id of the system. */
  readonly system: string
  readonly lessons: Lessons
  /** How many visits taught something. */
  readonly learntFrom: number
  /** What to say while nothing is known. */
  readonly absent?: string | undefined
  readonly session: Pick<Session, 'record' | 'correct'>
}

/** What earlier visits taught of the system: that it is believed, and the way to forget it, and to believe it again. */
export function LearntPlace({ system, lessons: { visits, forgotten }, learntFrom, absent, session }: Props) {
  const trouble = useSignal<string | undefined>(undefined)
  const act = async (kept: Kept) => {
    const result = await kept
    trouble.value = result.ok ? undefined : notKeptInWords(result.error)
  }
  const forget = () => act(session.record(system, { kind: 'lessons-forgotten', visits: visits.map(({ id }) => id) }))
  const says =
    learntFrom > 0
      ? learntFrom === 1
        ? t('Known from 1 earlier visit: how this very system differs from what its nameplate alone would give.')
        : t(
            'Known from {0} earlier visits: how this very system differs from what its nameplate alone would give.',
            learntFrom,
          )
      : forgotten
        ? t('What earlier visits had taught was forgotten.')
        : absent
  if (says === undefined) return null
  return (
    <section class="learnt" aria-label={t('Learnt from earlier visits')}>
      <p class={learntFrom > 0 ? '' : 'hint'}>{says}</p>
      {learntFrom > 0 && (
        <button type="button" class="key" onClick={() => void forget()}>
          {t('Forget it: parts were changed, or it is another unit')}
        </button>
      )}
      {learntFrom === 0 && forgotten && (
        <button
          type="button"
          class="key"
          onClick={() => void act(session.correct(system, forgotten.eventId, undefined))}
        >
          {t('Bring it back')}
        </button>
      )}
      {trouble.value !== undefined && <Trouble>{trouble.value}</Trouble>}
    </section>
  )
}
