import { format, quantity, type UnitPreference } from '@chargewright/quantity'
import { useSignal } from '@preact/signals'
import { notKeptInWords } from '../session/not-kept.ts'
import type { Kept } from '../session/session.ts'
import { t } from '../words/t.ts'

interface Props {
  readonly units: UnitPreference
  readonly keep: (typed: string) => Kept
}

/** Beyond this the altitude would be worse than one looked up for the town. */
const WORST_M = 100

/** The altitude of the site from this device, by one tap. It may refuse, and then it is typed. */
export function SiteAltitude({ units, keep }: Props) {
  const says = useSignal<string | undefined>(undefined)
  const asking = useSignal(false)
  if (!('geolocation' in navigator)) return null
  const take = async ({ coords: { altitude, altitudeAccuracy } }: GeolocationPosition) => {
    asking.value = false
    if (altitude === null || !Number.isFinite(altitude)) says.value = t(NO_ALTITUDE)
    else if ((altitudeAccuracy ?? 0) > WORST_M) {
      const off = format(quantity('elevation', altitudeAccuracy ?? 0), units)
      says.value = t('This device knows its altitude to {0} only. Type it, from a map or the town.', off)
    } else {
      const kept = await keep(`${Math.round(altitude)} m`)
      says.value = kept.ok ? undefined : notKeptInWords(kept.error, 'Site elevation')
    }
  }
  return (
    <div class="site-altitude">
      <button
        type="button"
        class="key"
        aria-disabled={asking.value}
        onClick={() => {
          if (asking.value) return
          asking.value = true
          says.value = undefined
          navigator.geolocation.getCurrentPosition(
            (position) => void take(position),
            ({ code }) => {
              asking.value = false
              says.value = t(REFUSED[code] ?? NO_ALTITUDE)
            },
            { enableHighAccuracy: true, timeout: 30_000, maximumAge: 600_000 },
          )
        }}
      >
        {asking.value ? t('Finding it …') : t('Take it from this device')}
      </button>
      <p class="hint" role="status">
        {says.value}
      </p>
    </div>
  )
}

const NO_ALTITUDE = 'This device gives no altitude here. Type it, from a map or the town.'

/** By the code of the platform. */
const REFUSED: Readonly<Record<number, string>> = {
  1: 'The location was not allowed. Nothing else needs it: type the altitude, from a map or the town.',
  3: 'The device did not find its place in time. Try again under open sky, or type the altitude.',
}
