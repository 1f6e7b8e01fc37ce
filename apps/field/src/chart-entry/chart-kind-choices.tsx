import type { MakersChart } from '@chargewright/visit'
import { Choices } from '../parts/choices.tsx'
import { t } from '../words/t.ts'

type Kind = Pick<MakersChart, 'indoor' | 'unit'>

interface Props {
  readonly kind: Kind
  readonly choose: (kind: Kind) => void
}

const INDOOR = { 'wet-bulb': 'wet bulb', 'dry-bulb': 'dry bulb' } as const
const UNITS = { '°F': '°F', '°C': '°C' } as const

/** What the temperatures of a chart are: a wet bulb or a dry bulb indoors, in one unit throughout. */
export function ChartKindChoices({ kind, choose }: Props) {
  return (
    <>
      <Choices
        label={t('Indoor temperature')}
        choices={INDOOR}
        chosen={kind.indoor}
        choose={(indoor) => choose({ ...kind, indoor })}
      />
      <Choices
        label={t('Unit of the chart')}
        choices={UNITS}
        chosen={kind.unit}
        choose={(unit) => choose({ ...kind, unit })}
      />
    </>
  )
}
