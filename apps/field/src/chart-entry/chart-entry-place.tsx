import type { MakersChart, SystemStatement } from '@chargewright/visit'
import { useSignal } from '@preact/signals'
import type { ComponentType } from 'preact'
import type { Kept } from '../session/session.ts'
import { t } from '../words/t.ts'

export interface ChartEntryProps {
  readonly id: string
  readonly chart: MakersChart | undefined
  readonly remark?: string | undefined
  readonly state: (stated: SystemStatement) => Kept
}

/** The maker's charging chart: whether there is one, and the way to enter it, which is loaded when it is wanted. */
export function ChartEntryPlace(props: ChartEntryProps) {
  const { id, chart, remark } = props
  const Entry = useSignal<ComponentType<ChartEntryProps> | undefined>(undefined)
  const isCutOff = useSignal(false)
  const open = () =>
    import('./chart-entry.tsx').then(
      ({ ChartEntry }) => {
        Entry.value = ChartEntry
      },
      () => {
        isCutOff.value = true
      },
    )
  return (
    <div class="form">
      <p class="form-label">{t('Maker’s charging chart')}</p>
      <p class="hint">{chart ? describe(chart) : t('None yet. The maker’s figures always win over any rule.')}</p>
      {remark !== undefined && <p class="trouble">{remark}</p>}
      {isCutOff.value && <p class="trouble">{t('This part could not be loaded. Load the page again.')}</p>}
      {Entry.value ? (
        <Entry.value {...props} />
      ) : (
        <button type="button" id={id} class="key" data-entry onClick={() => void open()}>
          {chart ? t('Change the chart') : t('Enter the chart')}
        </button>
      )}
    </div>
  )
}

function describe(chart: MakersChart): string {
  const bulb = chart.indoor === 'wet-bulb' ? t('indoor wet bulb') : t('indoor dry bulb')
  if (chart.form === 'csv') return t('One is kept, as text, over {0}, in {1}.', bulb, chart.unit)
  const { outdoorTemperatures: outdoor, indoorTemperatures: indoor } = chart
  return t(
    'One is kept: {0} outdoor temperatures by {1} of the {2}, in {3}.',
    outdoor.length,
    indoor.length,
    bulb,
    chart.unit,
  )
}
