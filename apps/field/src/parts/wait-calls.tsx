import { useSignal } from '@preact/signals'
import { t } from '../words/t.ts'
import { callPermission, useScreenOn } from './wait-signals.ts'

/** How one will know that the wait is over, told as this device can. It asks to call only here, and only once. */
export function WaitCalls() {
  const screen = useScreenOn(true)
  const permission = useSignal(callPermission())
  return (
    <div class="wait-calls">
      {permission.value === 'ask' && (
        <button
          type="button"
          class="key"
          onClick={async () => {
            await Notification.requestPermission()
            permission.value = callPermission()
          }}
        >
          {t('Call me when it is over')}
        </button>
      )}
      <p class="hint">
        {permission.value === 'allowed'
          ? t('This device will call when it is over, as long as this page stays open.')
          : t('Nothing is lost if the screen locks: the time goes on by the clock.')}{' '}
        {screen === 'on' ? t('The screen stays on while this page is in sight.') : ''}
      </p>
    </div>
  )
}
