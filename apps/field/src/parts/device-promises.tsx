import type { DeviceState } from '../session/device-state.ts'
import { t } from '../words/t.ts'

const OFFLINE = {
  preparing: 'Getting ready to work without a network …',
  ready: 'Works without a network from now on.',
  impossible: 'This browser cannot work here without a network.',
} as const

const PERSISTENCE = {
  asking: 'Asking the browser to keep what is entered …',
  promised: 'The browser has promised not to clear what is kept here.',
  'not-promised':
    'The browser has not promised to keep the visits: it may clear them when space runs out. Export those that matter.',
} as const

/** What this browser promises about what is entered here. */
export function DevicePromises({ device }: { readonly device: DeviceState }) {
  return (
    <>
      {device.storage === 'page-only' ? (
        <p class="trouble" role="alert">
          {t(
            'This browser refuses to store anything. What you enter is lost when this page is closed: export it first.',
          )}
        </p>
      ) : (
        <p>{t(PERSISTENCE[device.persistence.value])}</p>
      )}
      <p>{t(OFFLINE[device.offline.value])}</p>
    </>
  )
}
