import { format, type UnitPreference } from '@chargewright/quantity'
import type { Fact } from '@chargewright/visit'
import { useEffect, useRef } from 'preact/hooks'
import { quantityInWords } from '../session/in-words.ts'
import type { Kept } from '../session/session.ts'
import { minutesTold, type WaitClock, waitState } from '../session/wait-clock.ts'
import { t } from '../words/t.ts'
import { hourInWords } from './time-in-words.ts'
import { useNow } from './use-now.ts'
import { WaitCalls } from './wait-calls.tsx'
import { call } from './wait-signals.ts'

interface Props {
  readonly clock: WaitClock
  /** Time of the last entry. */
  readonly latest: number
  readonly units: UnitPreference
  readonly record: (fact: Fact) => Kept
}

/** A wait by the clock of this device: what is left of it, and what to do when it is over. */
export function SettleClock({ clock, latest, units, record }: Props) {
  const { purpose, duration, begins, ends } = clock
  const now = useNow()
  const state = waitState(clock, now, latest)
  const was = useRef(state.kind)
  useEffect(() => {
    if (was.current === 'running' && state.kind === 'over') void call(t(OVER[purpose]))
    was.current = state.kind
  }, [state.kind])
  const whole = format(duration, units)
  const end = (lasted: string) => void record({ kind: 'wait', purpose, duration: lasted })
  if (state.kind === 'set-back') {
    return (
      <div class="settle-clock">
        <p role="alert">
          {t(
            'The clock of this device shows a time from before the last entry, {0}: it cannot tell how much of the wait is left. Go by your watch, {1} from the change on.',
            hourInWords(latest),
            whole,
          )}
        </p>
        <button type="button" class="key" onClick={() => end(whole)}>
          {t('I have waited {0}', whole)}
        </button>
      </div>
    )
  }
  return (
    <div class="settle-clock" data-state={state.kind}>
      <p role="timer">
        {state.kind === 'running' ? (
          <>
            <strong>{leftInWords(state.left_s)}</strong> {t(THEN[purpose], hourInWords(wholeMinute(ends)))}
          </>
        ) : (
          <>
            <strong>{t(NOW[purpose])}</strong>{' '}
            {t('{0} were over at {1}', quantityInWords(duration, units), hourInWords(wholeMinute(ends)))}
          </>
        )}
      </p>
      <progress
        class="wait-bar"
        aria-label={t('Part of the wait that is over')}
        max={ends - begins}
        value={Math.min(now, ends) - begins}
      />
      <p class="unseen" role="status">
        {state.kind === 'running' ? t('{0} minutes to go', minutesTold(state.left_s)) : t(OVER[purpose])}
      </p>
      {state.kind === 'running' && <WaitCalls />}
      {state.kind === 'over' && (clock.isBegun || purpose === 'equalise') && (
        <button type="button" class="act" onClick={() => end(whole)}>
          {t(GO_ON[purpose])}
        </button>
      )}
      {state.kind === 'running' && clock.isBegun && (
        <button type="button" class="link" onClick={() => end(minutesSince(begins, now))}>
          {t('Stop waiting')}
        </button>
      )}
    </div>
  )
}

const THEN = { settle: 'Read again from {0} on', equalise: 'Start from {0} on' } as const
const NOW = { settle: 'Read again now', equalise: 'Start now' } as const
const OVER = { settle: 'The wait is over: read again', equalise: 'The wait is over: start' } as const
const GO_ON = { settle: 'It has run: read again', equalise: 'It has rested: go on' } as const

/** The first whole minute at which the wait is over: a reading in the minute before it could be seconds too early. */
const wholeMinute = (ends: number) => Math.ceil(ends / 60_000) * 60_000

/** Minutes as long as there are some; then seconds. */
function leftInWords(left_s: number): string {
  return left_s > 60 ? t('{0} to go', `${Math.ceil(left_s / 60)}\u00a0min`) : t('{0} to go', `${left_s}\u00a0s`)
}

const minutesSince = (begins: number, now: number) => `${Math.max(0, Math.floor((now - begins) / 60_000))} min`
