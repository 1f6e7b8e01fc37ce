import { FigureTable } from '../parts/picture-figure.tsx'
import { t } from '../words/t.ts'
import type { Traced } from './trace.ts'

/** The grid that the taps make, to be checked before it is kept. */
export function TraceResult({ found: { chart, apart } }: { readonly found: Traced }) {
  const { unit, indoor, outdoorTemperatures, indoorTemperatures, superheat } = chart
  return (
    <section class="trace-result" aria-label={t('The grid so far')}>
      <p>
        {t(
          'Hold the drawn curves against the photo. The grid passes every tap within {0}.',
          `${apart.toFixed(1)} ${unit}`,
        )}
      </p>
      <FigureTable
        head={[
          t('outdoor, {0}', unit),
          ...indoorTemperatures.map((value) => `${value} ${indoor === 'wet-bulb' ? t('wet bulb') : t('dry bulb')}`),
        ]}
        rows={superheat.map((row, i) => [
          String(outdoorTemperatures[i]),
          ...row.map((value) => value?.toString() ?? '—'),
        ])}
      />
    </section>
  )
}
