import type { MakersChart, SystemStatement } from '@chargewright/visit'
import { useSignal } from '@preact/signals'
import { notKeptInWords } from '../session/not-kept.ts'
import type { Kept } from '../session/session.ts'
import { Choices } from './choices.tsx'

interface Props {
  readonly id: string
  readonly chart: MakersChart | undefined
  readonly remark?: string | undefined
  readonly state: (stated: SystemStatement) => Kept
}

const INDOOR = { 'wet-bulb': 'wet bulb', 'dry-bulb': 'dry bulb' } as const
const UNITS = { '°F': '°F', '°C': '°C' } as const

/** The maker's charging chart of this model, pasted as text. The maker's figures always win over ours. */
export function ChartForm({ id, chart, remark, state }: Props) {
  const indoor = useSignal<keyof typeof INDOOR>(chart?.indoor ?? 'wet-bulb')
  const unit = useSignal<keyof typeof UNITS>(chart?.unit ?? '°F')
  const draft = useSignal<string | undefined>(undefined)
  const trouble = useSignal<string | undefined>(undefined)
  const text = draft.value ?? (chart?.form === 'csv' ? chart.csv : '')
  const keep = async () => {
    const csv = text.trim()
    const makersChart = csv === '' ? null : ({ form: 'csv', indoor: indoor.value, unit: unit.value, csv } as const)
    const kept = await state({ makersChart })
    trouble.value = kept.ok ? undefined : notKeptInWords(kept.error, 'Maker’s chart')
    if (kept.ok) draft.value = undefined
  }
  return (
    <div class="form">
      <label class="form-label" for={id}>
        Maker’s charging chart
      </label>
      <p class="hint" id={`${id}-says`}>
        {chart?.form === 'grid'
          ? 'A chart is kept as a grid. What you paste here takes its place.'
          : 'First line: the indoor temperatures. Then a line for each outdoor temperature, which comes first. Leave a cell empty where the maker gives no value.'}
      </p>
      <textarea
        id={id}
        rows={5}
        spellcheck={false}
        aria-describedby={`${id}-says`}
        placeholder={',58,62,66\n85,12,17,22\n95,6,11,17'}
        value={text}
        onInput={(event) => {
          draft.value = event.currentTarget.value
        }}
      />
      <Choices label="Indoor temperature" choices={INDOOR} chosen={indoor.value} choose={(to) => (indoor.value = to)} />
      <Choices label="Unit of the chart" choices={UNITS} chosen={unit.value} choose={(to) => (unit.value = to)} />
      {(trouble.value ?? remark) !== undefined && (
        <p class="trouble" role="alert">
          {trouble.value ?? remark}
        </p>
      )}
      <button type="button" class="key" onClick={() => void keep()}>
        Keep the chart
      </button>
    </div>
  )
}
