import { type Channel, type Steadiness, steadyValue } from '@chargewright/charging'
import { type Dimension, type Quantity, quantity, type UnitPreference } from '@chargewright/quantity'
import { readingKind } from '@chargewright/visit'
import { FigureTable } from '../parts/picture-figure.tsx'
import { inWords, quantityInWords } from '../session/in-words.ts'
import { sourceInWords } from '../words/source-in-words.ts'
import { t } from '../words/t.ts'

interface Props {
  readonly found: Steadiness
  readonly channels: readonly Channel[]
  readonly units: UnitPreference
}

const KINDS = { settled: 'holds still', 'not-settled': 'moves', 'too-short': 'not watched long enough' } as const
const VERDICTS = { settled: 'Settled', 'not-settled': 'Not settled', 'too-short': 'Not settled yet' } as const

/** Whether all instruments hold still, in words and figures: the pictures above, for those who do not see them. */
export function SteadinessReport({ found, channels, units }: Props) {
  return (
    <div class="steadiness">
      <p class="steadiness-verdict" data-kind={found.kind} role="status">
        <strong>{t(VERDICTS[found.kind])}</strong> {inWords(found.sentence, units)}
      </p>
      <FigureTable
        head={[t('reading'), t('last minute'), t('deviation'), t('it')]}
        rows={found.channels.map(({ what, kind, deviation, most }, i) => {
          const channel = channels[i]!
          const value = steadyValue(channel)
          const apart = (si: number | undefined) =>
            si === undefined ? '' : quantityInWords(difference(si, channel.dimension), units)
          return [
            t(readingKind(what).label),
            value ? quantityInWords(value, units) : '',
            deviation === undefined ? '' : t('{0} of {1}', apart(deviation), apart(most)),
            t(KINDS[kind]),
          ]
        })}
      />
      <p class="source">{sourceInWords(found.source)}</p>
    </div>
  )
}

const DIFFERENCES: Readonly<Partial<Record<Dimension, Dimension>>> = {
  temperature: 'temperature difference',
  'gauge pressure': 'pressure difference',
  'absolute pressure': 'pressure difference',
}

/** A deviation is a difference: 1.8 °F of it are 1 K, wherever the temperature lies. */
const difference = (si: number, dimension: Dimension): Quantity => quantity(DIFFERENCES[dimension] ?? dimension, si)
