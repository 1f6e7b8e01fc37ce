import type { ApplianceUse } from '@chargewright/ledger'
import type { UnitPreference } from '@chargewright/quantity'
import { useSignal } from '@preact/signals'
import type { ComponentType } from 'preact'
import { t } from '../words/t.ts'
import type { VisitEvents } from '../worker/protocol.ts'

export interface LeakRateProps {
  /** The earliest first. */
  readonly visits: readonly VisitEvents[]
  /** What the system is taken to be used for until another use is chosen. */
  readonly use: ApplianceUse
  readonly units: UnitPreference
}

/** The place of the leak rate on the page of a system. What it needs is loaded when it is opened. */
export function LeakRatePlace(props: LeakRateProps) {
  const Rate = useSignal<ComponentType<LeakRateProps> | undefined>(undefined)
  const isCutOff = useSignal(false)
  const load = async () => {
    try {
      Rate.value ??= (await import('./leak-rate.tsx')).LeakRate
    } catch {
      isCutOff.value = true
    }
  }
  return (
    <details class="group" onToggle={(event) => event.currentTarget.open && void load()}>
      <summary>
        <h2>{t('Leak rate by law')}</h2>
      </summary>
      <div class="step">
        {Rate.value && <Rate.value {...props} />}
        {isCutOff.value && (
          <p class="trouble">{t('This part could not be loaded. Load the page again; every entry is kept.')}</p>
        )}
      </div>
    </details>
  )
}
