import type { LogLine } from '@chargewright/cycle'
import { quantity, type UnitPreference } from '@chargewright/quantity'
import { useEffect } from 'preact/hooks'
import { FigureTable } from '../parts/picture-figure.tsx'
import { reveal } from '../parts/reveal.ts'
import { inWords, quantityInWords } from '../session/in-words.ts'
import { PRACTICE_ADDRESS } from '../session/route.ts'
import { t } from '../words/t.ts'
import type { Practised } from './practised.ts'
import { benchClock } from './run.ts'

interface Props {
  readonly debrief: NonNullable<Practised['debrief']>
  readonly units: UnitPreference
}

/** What the case was, how it ended, and what each act did once it had settled. */
export function BenchDebrief({ debrief: { statements, acts }, units }: Props) {
  // Where the bench was, and the hand still is, now stands what it was.
  useEffect(() => reveal('debrief'), [])
  const difference = (K: number | undefined) =>
    K === undefined ? t('no steady state') : quantityInWords(quantity('temperature difference', K), units)
  const change = (before: string, after: string) => (before === after ? after : `${before} → ${after}`)
  const both = (of: (point: LogLine['before']) => string, { before, after }: Pick<LogLine, 'before' | 'after'>) =>
    change(of(before), of(after))
  return (
    <section class="bench" aria-labelledby="debrief">
      <h2 id="debrief" tabIndex={-1}>
        {t('What it was')}
      </h2>
      {statements.map((statement) => (
        <p key={statement.template}>{inWords(statement, units)}</p>
      ))}
      {acts.length > 0 && (
        <>
          <h3>{t('What each act did, once settled')}</h3>
          <FigureTable
            head={[t('at'), t('you'), t('charge'), t('superheat'), t('subcooling')]}
            rows={acts.map((act) => [
              benchClock(act.clock_s),
              inWords(act.did, units),
              both(({ charge_kg }) => quantityInWords(quantity('mass', charge_kg), units), act),
              both(({ superheat_K }) => difference(superheat_K), act),
              both(({ subcooling_K }) => difference(subcooling_K), act),
            ])}
          />
        </>
      )}
      <a class="key" href={PRACTICE_ADDRESS}>
        {t('Another case')}
      </a>
    </section>
  )
}
