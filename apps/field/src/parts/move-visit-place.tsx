import { useSignal } from '@preact/signals'
import { t } from '../words/t.ts'
import type { MoveVisitProps } from './move-visit.tsx'
import { useLazy } from './use-lazy.ts'

/** The way of a visit to another system, folded away: it is seldom needed. */
export function MoveVisitPlace(props: MoveVisitProps) {
  const isWanted = useSignal(false)
  const Move = useLazy(isWanted.value, async () => (await import('./move-visit.tsx')).MoveVisit)
  return (
    <details
      class="fold"
      onToggle={() => {
        isWanted.value = true
      }}
    >
      <summary>{t('This visit was at another system')}</summary>
      {Move && <Move {...props} />}
    </details>
  )
}
