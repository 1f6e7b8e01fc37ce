import { problemInWords } from '../words/problem-in-words.ts'
import { sourceInWords } from '../words/source-in-words.ts'
import { t } from '../words/t.ts'
import './steps.css'
import { APPLIANCE_USES } from '@chargewright/ledger'
import { useSignal } from '@preact/signals'
import { Choices } from '../parts/choices.tsx'
import { EngineState } from '../parts/engine-state.tsx'
import { inWords, quantityInWords } from '../session/in-words.ts'
import { useAnswer } from '../worker/use-answer.ts'
import type { LeakRateProps } from './leak-rate-place.tsx'

/** How much of its charge a system loses in a year by both legal methods, and what is due by when. */
export function LeakRate({ visits, use, units }: LeakRateProps) {
  const chosen = useSignal(use)
  const asking = useAnswer('leakRate', visits, chosen.value)
  const found = asking.answer
  return (
    <>
      <Choices label={t('It is')} choices={APPLIANCE_USES} chosen={chosen.value} choose={(to) => (chosen.value = to)} />
      <EngineState asking={asking} />
      {found && !found.ok && <p class="doubt">{t('No rate yet. {0}', problemInWords(found.error))}</p>}
      {found?.ok && (
        <>
          <p>
            {t(
              'Full charge {0}; added {1}.',
              quantityInWords(found.value.fullCharge, units),
              found.value.additions
                .map(({ on, mass }) => t('{0} on {1}', quantityInWords(mass, units), on.slice(0, 10)))
                .join(', '),
            )}
          </p>
          {found.value.laws.length === 0 && (
            <p>{t('No leak-repair law on file applies to this charge and refrigerant.')}</p>
          )}
          {found.value.laws.map(({ coverage, rates, clocks }) => (
            <section key={coverage.law.id} class="verdict">
              <h3>{t(coverage.law.title)}</h3>
              {coverage.verdict === 'cannot-tell' && <p class="doubt">{inWords(coverage.because, units)}</p>}
              {rates.map((rate) =>
                rate.ok ? (
                  <p key={rate.value.sentence.values.join()} class={rate.value.over ? 'trouble' : ''}>
                    {inWords(rate.value.sentence, units)} <span class="source">{sourceInWords(rate.value.source)}</span>
                  </p>
                ) : (
                  <p key={problemInWords(rate.error)} class="doubt">
                    {problemInWords(rate.error)}
                  </p>
                ),
              )}
              <ul class="due">
                {clocks.map(({ what, due }) => (
                  <li key={what.template}>
                    <span>{inWords(what, units)}</span>
                    <strong>
                      {due.kind === 'by' ? t('by {0}', due.day) : t('waits for {0}', inWords(due.for, units))}
                    </strong>
                  </li>
                ))}
              </ul>
            </section>
          ))}
          <p class="hint">
            {t('No legal advice. State and local law may ask for more; a recharge after a repair counts in full.')}
          </p>
        </>
      )}
    </>
  )
}
