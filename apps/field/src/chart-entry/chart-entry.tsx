import { t } from '../words/t.ts'
import './chart-entry.css'
import type { MakersChart } from '@chargewright/visit'
import { useSignal } from '@preact/signals'
import { Choices } from '../parts/choices.tsx'
import { notKeptInWords } from '../session/not-kept.ts'
import { ChartCsv } from './chart-csv.tsx'
import type { ChartEntryProps } from './chart-entry-place.tsx'
import { ChartGrid } from './chart-grid.tsx'
import { TracePhoto } from './trace-photo.tsx'

const WAYS = { trace: 'Trace a photo', type: 'Type it', paste: 'Paste as text' } as const

/** The ways to enter a chart. The maker's figures always win over ours. */
export function ChartEntry({ id, chart, state }: ChartEntryProps) {
  const way = useSignal<keyof typeof WAYS>(chart?.form === 'csv' ? 'paste' : 'type')
  const trouble = useSignal<string | undefined>(undefined)
  const isKept = useSignal(false)
  const keep = async (makersChart: MakersChart | null): Promise<boolean> => {
    const kept = await state({ makersChart })
    trouble.value = kept.ok ? undefined : notKeptInWords(kept.error, 'Maker’s chart')
    isKept.value = kept.ok
    return kept.ok
  }
  return (
    <div class="chart-entry" id={id} tabIndex={-1}>
      <Choices
        label={t('How the chart is entered')}
        choices={WAYS}
        chosen={way.value}
        choose={(to) => {
          way.value = to
          isKept.value = false
        }}
      />
      {way.value === 'trace' && <TracePhoto keep={keep} />}
      {way.value === 'type' && <ChartGrid chart={chart} keep={keep} />}
      {way.value === 'paste' && <ChartCsv chart={chart} keep={keep} />}
      {trouble.value !== undefined && (
        <p class="trouble" role="alert">
          {trouble.value}
        </p>
      )}
      {isKept.value && (
        <p class="notice" role="status">
          {t('The chart is kept. The target comes from it now.')}
        </p>
      )}
    </div>
  )
}
