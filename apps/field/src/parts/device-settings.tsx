import type { Preferences } from '../session/preference.ts'
import { DeviceInstruments } from './device-instruments.tsx'
import { DeviceUnits } from './device-units.tsx'

/** What this device remembers of its owner, folded away: it is set once. */
export function DeviceSettings({ preferences }: { readonly preferences: Preferences }) {
  return (
    <section class="settings" aria-label="Kept on this device">
      <details class="group">
        <summary>
          <h3>Unit of each quantity</h3>
        </summary>
        <DeviceUnits preferences={preferences} />
      </details>
      <details class="group" id="my-instruments">
        <summary>
          <h3>My instruments</h3>
          <span class="group-count">{countInWords(Object.keys(preferences.instruments.value).length)}</span>
        </summary>
        <DeviceInstruments preferences={preferences} />
      </details>
    </section>
  )
}

const countInWords = (count: number) => (count === 0 ? 'plain ones assumed' : `${count} described`)
