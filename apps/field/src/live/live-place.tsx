import type { UnitPreference } from '@chargewright/quantity'
import type { Fact } from '@chargewright/visit'
import { useSignal } from '@preact/signals'
import type { ComponentType } from 'preact'
import type { Theme } from '../session/preference.ts'
import type { Kept } from '../session/session.ts'
import { t } from '../words/t.ts'

export interface LiveProps {
  readonly units: UnitPreference
  readonly theme: Theme
  readonly record: (fact: Fact) => Kept
}

/** The place of instruments that keep measuring. What reads and draws them is loaded when it is opened. */
export function LivePlace(props: LiveProps) {
  const Live = useSignal<ComponentType<LiveProps> | undefined>(undefined)
  const isCutOff = useSignal(false)
  const load = () => {
    if (Live.value) return
    import('./live-readings.tsx').then(
      ({ LiveReadings }) => {
        Live.value = LiveReadings
      },
      () => {
        isCutOff.value = true
      },
    )
  }
  return (
    <section class="live-place" aria-labelledby="live">
      <details class="group" onToggle={(event) => event.currentTarget.open && load()}>
        <summary>
          <h2 id="live">{t('From a logger or a sensor')}</h2>
        </summary>
        {Live.value && <Live.value {...props} />}
        {isCutOff.value && (
          <p class="trouble">{t('This part could not be loaded. Type the readings, or load the page again.')}</p>
        )}
      </details>
    </section>
  )
}
