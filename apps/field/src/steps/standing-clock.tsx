import type { UnitPreference } from '@chargewright/quantity'
import { FULL_TEST } from '@chargewright/tightness'
import { timeInWords } from '../parts/time-in-words.ts'
import { useNow } from '../parts/use-now.ts'
import { quantityInWords } from '../session/in-words.ts'
import { t } from '../words/t.ts'
import { standingTime } from './standing-time.ts'

interface Props {
  /** When the test began. */
  readonly begun: string
  readonly units: UnitPreference
}

/** How long a standing test has stood, and how long it should. */
export function StandingClock({ begun, units }: Props) {
  const time = standingTime(begun, useNow())
  if (!time) return null
  return (
    <p role="timer" class="standing">
      <strong>{t('It has stood {0}.', quantityInWords(time.stood, units))}</strong>{' '}
      {t('A full test stands {0}, until {1}.', quantityInWords(FULL_TEST, units), timeInWords(time.ends))}
    </p>
  )
}
