import { useSignal } from '@preact/signals'
import type { ComponentType } from 'preact'
import type { Preferences } from '../session/preference.ts'
import type { DevicePanelsProps } from './device-panels.tsx'

/** What this device remembers of its owner, folded away: it is set once. */
export function DeviceSettings({ preferences }: { readonly preferences: Preferences }) {
  const Panels = useSignal<ComponentType<DevicePanelsProps> | undefined>(undefined)
  const open = async () => {
    const { DevicePanels } = await import('./device-panels.tsx')
    Panels.value = DevicePanels
  }
  const panel = (of: DevicePanelsProps['of']) => Panels.value && <Panels.value of={of} preferences={preferences} />
  return (
    <section class="settings" aria-label="Kept on this device">
      <details class="group" onToggle={() => void open()}>
        <summary>
          <h3>Unit of each quantity</h3>
        </summary>
        {panel('units')}
      </details>
      <details class="group" id="my-instruments" onToggle={() => void open()}>
        <summary>
          <h3>My instruments</h3>
          <span class="group-count">{countInWords(Object.keys(preferences.instruments.value).length)}</span>
        </summary>
        {panel('instruments')}
      </details>
    </section>
  )
}

const countInWords = (count: number) => (count === 0 ? 'plain ones assumed' : `${count} described`)
