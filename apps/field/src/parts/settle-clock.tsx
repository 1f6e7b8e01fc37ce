import { LIMITS } from '@chargewright/charging'
import type { UnitPreference } from '@chargewright/quantity'
import type { Origin } from '@chargewright/visit'
import { useSignal } from '@preact/signals'
import { useEffect } from 'preact/hooks'
import { quantityInWords } from '../session/in-words.ts'
import { hourInWords } from './time-in-words.ts'

interface Props {
  /** The last change to the system. */
  readonly change: Origin
  readonly units: UnitPreference
}

const TICK_MS = 5_000
const MINUTE_MS = 60_000

/**
 * The wait after a change, by the clock of this device. It is reckoned from the time in the log and not counted, so
 * that a locked screen or a restart takes nothing from it.
 */
export function SettleClock({ change, units }: Props) {
  const now = useSignal(Date.now())
  useEffect(() => {
    const ticking = setInterval(() => {
      now.value = Date.now()
    }, TICK_MS)
    return () => clearInterval(ticking)
  }, [])
  const { quantity } = LIMITS.settleTime
  const over = Date.parse(change.at) + quantity.si * 1000
  const toGo = Math.ceil((over - now.value) / MINUTE_MS)
  // A log from elsewhere may carry a time that is none, or one from a clock that ran ahead.
  if (!(toGo * MINUTE_MS <= quantity.si * 1000)) return null
  return (
    <p class="settle-clock" role="timer" data-running={toGo > 0}>
      {toGo > 0 ? (
        <>
          <strong>{toGo}&nbsp;min to go</strong> Read again from {hourInWords(over)} on
        </>
      ) : (
        <>
          <strong>Read again now</strong> {quantityInWords(quantity, units)} since the last change were over at{' '}
          {hourInWords(over)}
        </>
      )}
    </p>
  )
}
