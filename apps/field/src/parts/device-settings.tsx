import { useSignal } from '@preact/signals'
import type { Preferences } from '../session/preference.ts'
import { t } from '../words/t.ts'
import type { DevicePanelsProps } from './device-panels.tsx'
import { useLazy } from './use-lazy.ts'

/** What this device remembers of its owner, folded away: it is set once. */
export function DeviceSettings({ preferences }: { readonly preferences: Preferences }) {
  const isWanted = useSignal(false)
  const Panels = useLazy(isWanted.value, async () => (await import('./device-panels.tsx')).DevicePanels)
  const want = () => {
    isWanted.value = true
  }
  const panel = (of: DevicePanelsProps['of']) => Panels && <Panels of={of} preferences={preferences} />
  return (
    <section class="settings" aria-label={t('Kept on this device')}>
      <details class="group" onToggle={want}>
        <summary>
          <h3>{t('Unit of each quantity')}</h3>
        </summary>
        {panel('units')}
      </details>
      <details class="group" id="my-instruments" onToggle={want}>
        <summary>
          <h3>{t('My instruments')}</h3>
          <span class="group-count">{countInWords(Object.keys(preferences.instruments.value).length)}</span>
        </summary>
        {panel('instruments')}
      </details>
    </section>
  )
}

const countInWords = (count: number) => (count === 0 ? t('plain ones assumed') : t('{0} described', count))
