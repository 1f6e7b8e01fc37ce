import { type ReadonlySignal, signal } from '@preact/signals'

/** What this browser promises: to work without a network, and not to clear what it keeps. */
export interface DeviceState {
  readonly offline: ReadonlySignal<'preparing' | 'ready' | 'impossible'>
  readonly persistence: ReadonlySignal<'asking' | 'promised' | 'not-promised'>
  /** Set where nothing could be stored at all: entries live as long as the page. */
  readonly storage: 'kept' | 'page-only'
}

/** Asks the browser for both promises. Neither is needed to work; both are shown. */
export function deviceState(navigator: Navigator, storage: DeviceState['storage']): DeviceState {
  const offline = signal<DeviceState['offline']['value']>('preparing')
  const persistence = signal<DeviceState['persistence']['value']>('asking')
  void (async () => {
    try {
      await navigator.serviceWorker.register(`${import.meta.env.BASE_URL}sw.js`)
      await navigator.serviceWorker.ready
      offline.value = 'ready'
    } catch {
      offline.value = 'impossible'
    }
  })()
  void (async () => {
    try {
      persistence.value = (await navigator.storage.persist()) ? 'promised' : 'not-promised'
    } catch {
      persistence.value = 'not-promised'
    }
  })()
  return { offline, persistence, storage }
}
