import { MOST_SEED } from '@chargewright/cycle'
import { METERING_DEVICES, type MeteringDevice } from '@chargewright/visit'
import { useSignal } from '@preact/signals'
import { useId } from 'preact/hooks'
import { Choices } from '../parts/choices.tsx'
import { DeviceSwitches } from '../parts/device-switches.tsx'
import { timeInWords } from '../parts/time-in-words.ts'
import type { Preferences } from '../session/preference.ts'
import { practiceAddress, START_ADDRESS } from '../session/route.ts'
import { t } from '../words/t.ts'
import { useEngine } from '../worker/engine-context.ts'
import type { PracticeStore } from './practice-store.ts'
import { benchClock, clockOf, isOver, type Run } from './run.ts'

interface Props {
  readonly runs: readonly Run[]
  readonly store: PracticeStore
  readonly preferences: Preferences
}

/** A new case, and the runs so far, each to be gone on with or taken away. */
export function RunList({ runs, store, preferences }: Props) {
  return (
    <>
      <header class="bar">
        <a class="key" href={START_ADDRESS}>
          {t('All systems')}
        </a>
        <DeviceSwitches preferences={preferences} />
      </header>
      <main class="start">
        <h1 tabIndex={-1}>{t('Practice bench')}</h1>
        <p>
          {t(
            'An invented air conditioner whose charge is in doubt, and perhaps more than its charge. Read it, wait, weigh, mend as on a roof; at the end you see what it was and what each act did.',
          )}
        </p>
        <NewCase store={store} />
        {runs.length > 0 && (
          <section aria-labelledby="runs">
            <h2 id="runs">{t('Runs on this device')}</h2>
            <ul class="visits">
              {runs.map((run) => (
                <li key={run.id} class="run">
                  <a href={practiceAddress(run.id)}>
                    <strong>{t('Case {0}', run.seed)}</strong>
                    <time class="visit-time" dateTime={run.startedAt}>
                      {timeInWords(run.startedAt)}
                    </time>
                    <span class="visit-about">
                      {t(METERING_DEVICES[run.device])} ·{' '}
                      {isOver(run) ? t('ended') : t('at {0}', benchClock(clockOf(run)))}
                    </span>
                  </a>
                  <button type="button" class="key" onClick={() => void store.remove(run.id)}>
                    {t('Take case {0} away', run.seed)}
                  </button>
                </li>
              ))}
            </ul>
          </section>
        )}
      </main>
    </>
  )
}

function NewCase({ store }: { readonly store: PracticeStore }) {
  const id = useId()
  const engine = useEngine()
  const device = useSignal<MeteringDevice>('fixed-orifice')
  const typed = useSignal('')
  const trouble = useSignal<string | undefined>(undefined)
  const isStarting = useSignal(false)
  const start = async () => {
    const text = typed.value.trim()
    const seed = text === '' ? 1 + Math.floor(Math.random() * MOST_DRAWN) : /^\d{1,10}$/.test(text) ? Number(text) : 0
    if (seed < 1 || seed > MOST_SEED) {
      trouble.value = t('The number of a case is a whole number from 1 to {0}.', MOST_SEED)
      return
    }
    if (isStarting.value) return
    isStarting.value = true
    const made = await engine.ask({}, 'practicePlate', { seed, device: device.value })
    isStarting.value = false
    if (!made.ok || !made.value.ok) {
      trouble.value = t('This case could not be made up. Try another number.')
      return
    }
    const runId = crypto.randomUUID()
    const startedAt = new Date().toISOString()
    const facts = { ...made.value.value, name: t('Practice {0}, no real system', seed) }
    const plate = { id: crypto.randomUUID(), at: startedAt, kind: 'system-described', facts } as const
    await store.start({ id: runId, seed, device: device.value, startedAt, requests: [], events: [plate] })
    location.hash = practiceAddress(runId)
  }
  return (
    <form
      class="form"
      onSubmit={(event) => {
        event.preventDefault()
        void start()
      }}
    >
      <Choices
        label={t('Its metering device')}
        choices={METERING_DEVICES}
        chosen={device.value}
        choose={(to) => (device.value = to)}
      />
      <label class="form-label" for={id}>
        {t('Number of the case')}
      </label>
      <input
        id={id}
        class="form-blank"
        inputMode="numeric"
        autoComplete="off"
        placeholder={t('drawn where none is given')}
        aria-describedby={`${id}-says`}
        value={typed.value}
        onInput={(event) => {
          typed.value = event.currentTarget.value
          trouble.value = undefined
        }}
      />
      <p class="hint" id={`${id}-says`}>
        {t('The same number and device are the same case on every device: give them to a whole class.')}
      </p>
      {trouble.value !== undefined && (
        <p class="trouble" role="alert">
          {trouble.value}
        </p>
      )}
      <button type="submit" class="act" aria-disabled={isStarting.value}>
        {t('Start a case')}
      </button>
    </form>
  )
}

/** Drawn numbers are short enough to be called across a room. */
const MOST_DRAWN = 9999
