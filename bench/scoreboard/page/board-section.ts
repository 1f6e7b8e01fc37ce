import type { Board, JudgeOnBoard, WhenAsking } from '../board.ts'
import { AIMS, AMOUNT_AIMS } from '../metrics/aims.ts'
import { RATE_NAMES, RATES } from '../metrics/rates.ts'
import { percent, table, written, writtenQuantile } from './write.ts'

/** The judges side by side, then ours by group. */
export function boardSection({ judges, asked, informed, seed }: Board): string {
  const ours = judges.at(-1)!
  return [
    `Seed ${seed}; ${ours.main.cases} cases with one fault or none, unseen half. Per cent, with exact 95 % intervals.`,
    mainTable(judges),
    amountTable(judges),
    informedTable(ours, informed),
    askedTable(asked),
    `![Wrong answers over the share of cases answered](scoreboard/risk-coverage.svg)`,
    `![Stated probability against how often it was right](scoreboard/calibration.svg)`,
    `### ${ours.name}: how far its probability can be believed`,
    reliabilityTable(ours),
    ...judges.toReversed().map((judge) => `### ${judge.name}, by group\n\n${groupTable(judge)}`),
  ].join('\n\n')
}

const mainTable = (judges: readonly JudgeOnBoard[]): string =>
  table(
    ['', ...judges.map(({ name }) => name), 'aim'],
    RATE_NAMES.map((name) => [
      RATES[name].title,
      ...judges.map(({ main }) => written(main.rates[name])),
      `≤ ${percent(AIMS[name].atMost)} (${percent(AIMS[name].better)})`,
    ]),
  )

function amountTable(judges: readonly JudgeOnBoard[]): string {
  const { errorMedian, errorP90, coverage } = AMOUNT_AIMS
  const of = (title: string, cell: (judge: JudgeOnBoard) => string, aim: string) => [title, ...judges.map(cell), aim]
  return table(
    ['amount to add or recover, % of the charge', ...judges.map(({ name }) => name), 'aim'],
    [
      of(
        'error, median',
        ({ main }) => writtenQuantile(main.amounts.errorMedian),
        `≤ ${percent(errorMedian.atMost)} (${percent(errorMedian.better)})`,
      ),
      of(
        'error, 90 % lie below',
        ({ main }) => writtenQuantile(main.amounts.errorP90),
        `≤ ${percent(errorP90.atMost)} (${percent(errorP90.better)})`,
      ),
      of(
        '90 % interval holds the truth',
        ({ main }) => written(main.amounts.coverage),
        `${percent(coverage.from)} to ${percent(coverage.to)}`,
      ),
      of('width of that interval, median', ({ main }) => writtenQuantile(main.amounts.widthMedian), ''),
    ],
  )
}

const informedTable = ({ name, main }: JudgeOnBoard, informed: Board['informed']): string =>
  table(
    ['where more is known', `${name}, as read`, ...informed.map((each) => each.name), 'aim'],
    RATE_NAMES.map((rate) => [
      RATES[rate].title,
      ...[main, ...informed.map(({ figures }) => figures)].map(({ rates }) => written(rates[rate])),
      `≤ ${percent(AIMS[rate].atMost)} (${percent(AIMS[rate].better)})`,
    ]),
  )

const askedTable = ({ readings, figures }: WhenAsking): string =>
  table(
    [
      'readings handed out one by one, on request',
      'cases',
      'values in hand at the answer, median',
      'no answer',
      'false alarm',
      'harmful act',
    ],
    [
      [
        'diagnosis and decision',
        String(figures.cases),
        readings ? `${readings.value} (${readings.low} to ${readings.high})` : '–',
        written(figures.rates.noAnswer),
        written(figures.rates.falseAlarm),
        written(figures.rates.harmfulAct),
      ],
    ],
  )

const reliabilityTable = ({ reliability }: JudgeOnBoard): string =>
  table(
    ['stated', 'answers', 'mean stated', 'right'],
    reliability.map((bin) => [
      `${percent(bin.from)} to ${percent(bin.to)}`,
      String(bin.of),
      percent(bin.stated),
      written(bin),
    ]),
  )

const GROUP_RATES = [
  'falseAlarm',
  'harmfulAct',
  'misdiagnosis',
  'missedOrUnanswered',
  'calledSound',
  'noAnswer',
] as const

const groupTable = ({ groups }: JudgeOnBoard): string =>
  table(
    ['', 'cases', ...GROUP_RATES.map((name) => RATES[name].title), '90 % interval holds'],
    groups.map(({ title, figures }) => [
      title,
      String(figures.cases),
      ...GROUP_RATES.map((name) => written(figures.rates[name])),
      written(figures.amounts.coverage),
    ]),
  )
