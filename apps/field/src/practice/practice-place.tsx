import { useSignal } from '@preact/signals'
import type { ComponentType } from 'preact'
import { useEffect } from 'preact/hooks'
import type { VisitScreen } from '../screens/visit-screen.tsx'
import type { Preferences } from '../session/preference.ts'
import { t } from '../words/t.ts'

export interface PracticeProps {
  /** The run that is worked on; without one, all runs. */
  readonly id: string | undefined
  readonly preferences: Preferences
  /** The visit page, which the app has loaded for real visits. */
  readonly Visit: typeof VisitScreen | undefined
}

/** The place of the practice bench; what it needs is loaded when one goes there. */
export function PracticePlace(props: PracticeProps) {
  const Practice = useSignal<ComponentType<PracticeProps> | undefined>(undefined)
  const isCutOff = useSignal(false)
  useEffect(() => {
    import('./practice-screen.tsx').then(
      ({ PracticeScreen }) => {
        Practice.value = PracticeScreen
      },
      () => {
        isCutOff.value = true
      },
    )
  }, [])
  if (Practice.value) return <Practice.value {...props} />
  return (
    <main class="start" aria-busy={!isCutOff.value}>
      {isCutOff.value && <p class="trouble">{t('The practice bench could not be loaded. Load the page again.')}</p>}
    </main>
  )
}
