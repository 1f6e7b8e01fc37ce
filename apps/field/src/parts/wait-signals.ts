import { useSignal } from '@preact/signals'
import { useEffect } from 'preact/hooks'

/** Keeps the screen on while something runs, where the browser can: `on` tells that it does. */
export function useScreenOn(isRunning: boolean): 'on' | 'off' {
  const state = useSignal<'on' | 'off'>('off')
  useEffect(() => {
    if (!isRunning || !('wakeLock' in navigator)) return
    let lock: WakeLockSentinel | undefined
    // The browser lets go of it whenever the page goes out of sight.
    const take = async () => {
      if (document.visibilityState !== 'visible') return
      try {
        lock = await navigator.wakeLock.request('screen')
        state.value = 'on'
      } catch {
        state.value = 'off'
      }
    }
    void take()
    document.addEventListener('visibilitychange', take)
    return () => {
      document.removeEventListener('visibilitychange', take)
      state.value = 'off'
      void lock?.release()
    }
  }, [isRunning])
  return state.value
}

/** Whether this browser may call its owner: not yet asked, allowed, or never. */
export function callPermission(): 'ask' | 'allowed' | 'never' {
  if (!('Notification' in window)) return 'never'
  if (Notification.permission === 'default') return 'ask'
  return Notification.permission === 'granted' ? 'allowed' : 'never'
}

/** Calls the owner of the device by whatever it has. */
export async function call(words: string): Promise<void> {
  navigator.vibrate?.([600, 300, 600, 300, 600])
  if (callPermission() !== 'allowed') return
  const waiting = { tag: 'wait', requireInteraction: true }
  // A phone takes it from the service worker only, a desk without one from the page.
  const worker = await navigator.serviceWorker?.getRegistration()
  if (worker) await worker.showNotification(words, waiting)
  else new Notification(words, waiting)
}
