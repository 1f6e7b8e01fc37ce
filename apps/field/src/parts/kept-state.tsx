import type { Session } from '../session/session.ts'
import { describeStoreProblem } from '../store/store-problem.ts'
import { t } from '../words/t.ts'

/** Whether what was entered has reached the disk of this device. */
export function KeptState({ session }: { readonly session: Pick<Session, 'keeping'> }) {
  const { value: keeping } = session.keeping
  switch (keeping.kind) {
    case 'kept':
      return (
        <p class="kept" role="status">
          {t('kept on this device')}
        </p>
      )
    case 'keeping':
      return (
        <p class="kept" role="status">
          {t('keeping …')}
        </p>
      )
    case 'not-kept':
      return (
        <p class="kept trouble" role="alert">
          {t('not kept: {0}', describeStoreProblem(keeping.problem))}
        </p>
      )
  }
}
