import type { Assessment } from '@chargewright/charging'
import type { UnitPreference } from '@chargewright/quantity'
import type { Fact, Visit } from '@chargewright/visit'
import { useSignal } from '@preact/signals'
import type { ComponentType } from 'preact'
import type { MyInstruments } from '../session/instruments.ts'
import type { Kept } from '../session/session.ts'
import { t } from '../words/t.ts'
import type { VisitEvents } from '../worker/protocol.ts'

/** What every step of a visit is given. */
export interface StepProps {
  readonly visit: Visit
  readonly events: VisitEvents
  readonly units: UnitPreference
  readonly instruments: MyInstruments
  readonly record: (fact: Fact) => Kept
  readonly showEntry: (eventId: string) => void
  /** Cautions of what may be done here; undefined until the visit was judged. */
  readonly beside?: Assessment['beside'] | undefined
}

interface Props {
  readonly title: string
  /** What is known of it, in a few words beside the title. */
  readonly state: string
  readonly load: () => Promise<ComponentType<StepProps>>
  readonly step: StepProps
}

/** A step of the visit in its place on the page. What it needs is loaded when it is opened. */
export function StepPlace({ title, state, load, step }: Props) {
  const Step = useSignal<ComponentType<StepProps> | undefined>(undefined)
  const isCutOff = useSignal(false)
  const open = async () => {
    if (Step.value) return
    try {
      Step.value = await load()
    } catch {
      isCutOff.value = true
    }
  }
  return (
    <details class="group" onToggle={(event) => event.currentTarget.open && void open()}>
      <summary>
        <h3>{title}</h3>
        <span class="group-count">{state}</span>
      </summary>
      <div class="step">
        {Step.value && <Step.value {...step} />}
        {isCutOff.value && (
          <p class="trouble">{t('This part could not be loaded. Load the page again; every entry is kept.')}</p>
        )}
      </div>
    </details>
  )
}
