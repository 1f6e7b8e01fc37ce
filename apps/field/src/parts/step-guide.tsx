import type { Step } from '@chargewright/charging'
import type { UnitPreference } from '@chargewright/quantity'
import { useSignal } from '@preact/signals'
import { useLayoutEffect, useMemo, useRef } from 'preact/hooks'
import { inWords, quantityInWords } from '../session/in-words.ts'
import type { Kept } from '../session/session.ts'
import { stepProgress } from '../session/step-progress.ts'
import { t } from '../words/t.ts'
import { Steps } from './steps.tsx'

interface Props {
  readonly visitId: string
  /** What tells this list of steps from another one. */
  readonly list: string
  readonly steps: readonly Step[]
  readonly units: UnitPreference
  /** Begins the wait of a step; left out while one goes on. */
  readonly begin: ((wait: NonNullable<Step['wait']>) => Kept) | undefined
}

/** What to do, as one act at a time: the step at hand stands large, what is done and what comes stand folded around it. */
export function StepGuide({ visitId, list, steps, units, begin }: Props) {
  const progress = useMemo(() => stepProgress(() => localStorage, visitId, list), [visitId, list])
  const done = useSignal(Math.min(progress.done, Math.max(0, steps.length - 1)))
  const at = done.value
  const now = useRef<HTMLDivElement>(null)
  const isMoved = useRef(false)
  useLayoutEffect(() => {
    // The key that was pressed goes away at the last step: whoever works by keyboard goes on from the step itself.
    if (isMoved.current && document.activeElement === document.body) now.current?.focus({ preventScroll: true })
    isMoved.current = false
  }, [at])
  const step = steps[at]
  if (!step) return null
  const words = steps.map((one) => inWords(one, units))
  const go = (to: number) => {
    isMoved.current = true
    done.value = to
    progress.keep(to)
  }
  return (
    <div class="guide">
      {at > 0 && (
        <details class="more-steps">
          <summary>{at === 1 ? t('Step 1 done') : t('Steps 1 to {0} done', at)}</summary>
          <Steps label={t('Done')} steps={words.slice(0, at)} from={1} />
          <button type="button" class="link" onClick={() => go(at - 1)}>
            {t('Back one step')}
          </button>
        </details>
      )}
      <div class="guide-now" data-waits={step.wait !== undefined} aria-live="polite" ref={now} tabIndex={-1}>
        {steps.length > 1 && <p class="guide-count">{t('Step {0} of {1}', at + 1, steps.length)}</p>}
        <p class="guide-step">{words[at]}</p>
      </div>
      <div class="guide-keys">
        {step.wait && begin && (
          <button type="button" class="key" onClick={() => step.wait && void begin(step.wait)}>
            {t('Begin the wait: {0}', quantityInWords(step.wait.duration, units))}
          </button>
        )}
        {at + 1 < steps.length && (
          <button type="button" class="key" onClick={() => go(at + 1)}>
            {t('Done, next step')}
          </button>
        )}
      </div>
      {at + 1 < steps.length && (
        <details class="more-steps">
          <summary>
            {at + 2 === steps.length ? t('Then step {0}', at + 2) : t('Then steps {0} to {1}', at + 2, steps.length)}
          </summary>
          <Steps label={t('What to do then')} steps={words.slice(at + 1)} from={at + 2} />
        </details>
      )}
    </div>
  )
}
