import { METERING_DEVICES } from '@chargewright/visit'
import { reveal } from '../parts/reveal.ts'
import { t } from '../words/t.ts'
import { isOver, type Run } from './run.ts'

/** Stands over everything of the bench: by word, and by the edges of the paper. */
export function PracticeMark({ run }: { readonly run: Run | undefined }) {
  return (
    <p class="practice-mark">
      <strong>{t('Practice, no real system')}</strong>
      {run && (
        <>
          <span>{t('case {0}, {1}', run.seed, t(METERING_DEVICES[run.device]))}</span>
          <button type="button" class="link" onClick={() => reveal(isOver(run) ? 'debrief' : 'bench')}>
            {t('To the bench')}
          </button>
        </>
      )}
    </p>
  )
}
