import { t } from '../words/t.ts'
import type { Asking } from '../worker/use-answer.ts'

/** That an answer is being worked out, once it takes long enough to be noticed, or that it could not be. */
export function EngineState({ asking: { state, answer, detail, askAgain } }: { readonly asking: Asking<unknown> }) {
  switch (state) {
    case 'ready':
      return null
    case 'working':
      return (
        <p class="working" role="status">
          {answer === undefined ? t('Working it out …') : t('Working it out with what was entered last …')}
        </p>
      )
    case 'failed':
      return (
        <div class="engine-failed" role="alert">
          <p class="trouble">{t('This could not be worked out. Every entry is kept. ({0})', t(detail ?? ''))}</p>
          <button type="button" class="key" onClick={askAgain}>
            {t('Try again')}
          </button>
        </div>
      )
  }
}
