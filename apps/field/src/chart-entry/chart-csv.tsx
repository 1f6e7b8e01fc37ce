import type { MakersChart } from '@chargewright/visit'
import { useSignal } from '@preact/signals'
import { useId } from 'preact/hooks'
import { t } from '../words/t.ts'
import { ChartKindChoices } from './chart-kind-choices.tsx'

interface Props {
  readonly chart: MakersChart | undefined
  readonly keep: (chart: MakersChart | null) => Promise<boolean>
}

/** A chart pasted as text and kept as it was pasted. */
export function ChartCsv({ chart, keep }: Props) {
  const id = useId()
  const kind = useSignal({ indoor: chart?.indoor ?? 'wet-bulb', unit: chart?.unit ?? '°F' } as const)
  const draft = useSignal<string | undefined>(undefined)
  const text = draft.value ?? (chart?.form === 'csv' ? chart.csv : '')
  const submit = async () => {
    const csv = text.trim()
    if (await keep(csv === '' ? null : { form: 'csv', ...kind.value, csv })) draft.value = undefined
  }
  return (
    <div class="form">
      <label class="form-label" for={id}>
        {t('Maker’s charging chart, as text')}
      </label>
      <p class="hint" id={`${id}-says`}>
        {t(
          'First line: the indoor temperatures. Then a line for each outdoor temperature, which comes first. Leave a cell empty where the maker gives no value.',
        )}
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
      <ChartKindChoices kind={kind.value} choose={(to) => (kind.value = to as typeof kind.value)} />
      <button type="button" class="key" onClick={() => void submit()}>
        {t('Keep the chart')}
      </button>
    </div>
  )
}
