import { RATES } from '../metrics/rates.ts'
import type { Robustness } from '../robustness.ts'
import { table, written, writtenQuantile } from './write.ts'

const SHOWN = [
  'falseAlarm',
  'harmfulAct',
  'touchedForAnother',
  'misdiagnosis',
  'missedOrUnanswered',
  'calledSound',
  'noAnswer',
] as const

/** Each change of the twin or of the plants, before and after learning from sound visits. */
export const robustnessSection = ({ rows, visits }: Robustness): string =>
  [
    `One fault or none, ${rows[0]?.figures.cases} cases each; learnt again from ${visits} sound visits per device.`,
    table(
      ['', ...SHOWN.map((name) => RATES[name].title), 'amount error, median', '90 % interval holds'],
      rows.map(({ title, figures }) => [
        title,
        ...SHOWN.map((name) => written(figures.rates[name])),
        writtenQuantile(figures.amounts.errorMedian),
        written(figures.amounts.coverage),
      ]),
    ),
  ].join('\n\n')
