import { t } from '../words/t.ts'
import './steps.css'
import type { Airflow } from '@chargewright/moist-air'
import { COVERAGE, fail, fromSi, preferredUnit, quantity, type UnitPreference } from '@chargewright/quantity'
import { useSignal } from '@preact/signals'
import { Choices } from '../parts/choices.tsx'
import { EvidenceTree } from '../parts/evidence-tree.tsx'
import type { Kept } from '../session/session.ts'
import { useEngine } from '../worker/engine-context.ts'
import type { AirflowWay } from '../worker/protocol.ts'
import { HeatForm } from './heat-form.tsx'
import type { StepProps } from './step-place.tsx'
import { TableForm } from './table-form.tsx'
import { TraverseForm } from './traverse-form.tsx'

const WAYS = {
  'electric-heat': 'electric heat',
  traverse: 'traverse of a duct',
  'pressure-drop': 'drop over coil or filter',
  'fan-table': 'the maker’s fan table',
} as const
type Way = keyof typeof WAYS

/** The airflow from what can be measured here; it becomes the reading of the walk, with its own uncertainty. */
export function AirflowStep({ events, units, record, showEntry }: StepProps) {
  const engine = useEngine()
  const way = useSignal<Way>('electric-heat')
  const found = useSignal<Airflow | undefined>(undefined)
  const find = async (asked: AirflowWay, how: string): Kept => {
    const answer = await engine.ask({}, 'airflow', events, asked)
    if (!answer.ok) return fail({ kind: 'problems', problems: [NOT_WORKED_OUT] })
    if (!answer.value.ok) return fail({ kind: 'problems', problems: [answer.value.error] })
    const { airflow } = answer.value.value
    const accuracy = quantity('airflow', COVERAGE * (airflow.u ?? 0))
    const kept = await record({
      kind: 'reading',
      what: 'airflow',
      value: typedAs(airflow, units),
      instrument: { name: `${t(WAYS[asked.kind])}, ${how}`.slice(0, 200), accuracy: typedAs(accuracy, units) },
    })
    if (kept.ok) found.value = answer.value.value
    return kept
  }
  const form = { units, find }
  return (
    <>
      <Choices label={t('Found by')} choices={WAYS} chosen={way.value} choose={(to) => (way.value = to)} />
      {way.value === 'electric-heat' && <HeatForm {...form} />}
      {way.value === 'traverse' && <TraverseForm {...form} />}
      {way.value === 'pressure-drop' && <TableForm key="drop" kind="pressure-drop" {...form} />}
      {way.value === 'fan-table' && <TableForm key="fan" kind="fan-table" {...form} />}
      {found.value && (
        <div class="verdict" role="status">
          <EvidenceTree evidence={found.value.evidence} units={units} showEntry={showEntry} />
          <p class="hint">{t('It stands among the readings now, with this uncertainty.')}</p>
        </div>
      )}
    </>
  )
}

export interface AirflowFormProps {
  readonly units: UnitPreference
  /** @param how what was measured for it, in a few words */
  readonly find: (way: AirflowWay, how: string) => Kept
}

/** As one would type it: no sign parts the thousands. */
function typedAs(airflow: Airflow['airflow'], units: UnitPreference): string {
  const unit = preferredUnit('airflow', units)
  const plain = fromSi(airflow.si, unit).toPrecision(4)
  return `${Number(plain)} ${unit.symbol}`
}

const NOT_WORKED_OUT = {
  kind: 'unreadable',
  field: 'Airflow',
  value: 'these readings',
  accepted: 'another try: it could not be worked out',
} as const
