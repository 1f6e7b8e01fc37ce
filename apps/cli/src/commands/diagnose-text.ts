import { CAUSE_WORDS, decisionWords, entryLabel, explanation, FINDINGS, wantedReading } from '@chargewright/charging'
import type { Diagnosis } from '@chargewright/diagnosis'
import { render, type Statement, type UnitPreference } from '@chargewright/quantity'
import { columns } from '../text/columns.ts'
import { evidenceWriter } from '../text/evidence-writer.ts'
import { page, section, spread } from '../text/page.ts'
import { wrap } from '../text/wrap.ts'
import type { DiagnoseAnswer } from './diagnose.ts'

/** How many causes are opened down to what each would have made of the readings. */
const EXPLAINED = 2

/** What to do, which causes are how likely, and what the two likeliest would have made of every reading. */
export function diagnoseText({ visit, weighed }: DiagnoseAnswer, units: UnitPreference, width: number): string {
  const words = (statement: Statement) => render(statement, units)
  const para = (text: string) => wrap(text, width, '  ')
  if (!weighed.ok) {
    return page([...spread('no diagnosis', '', width), ...para(`Nothing was weighed: ${words(weighed.error)}.`)])
  }
  const { diagnosis, decision } = weighed.value
  const writer = evidenceWriter(units, width)
  const { kind, sentence } = decisionWords(decision)
  const wanted = decision.kind === 'read' ? wantedReading(decision.next.observable, visit) : undefined
  return page(
    [...spread(FINDINGS[kind], 'by a model of this system', width), ...para(`${words(sentence)}.`)],
    section('Enter next', wanted ? para(`${entryLabel(wanted.entry)}: ${words(wanted.why)}`) : []),
    section('Which cause', causes(diagnosis, words)),
    section('Charge', para(charge(diagnosis))),
    ...diagnosis.singles
      .slice(0, EXPLAINED)
      .map(({ cause }, i) =>
        section(i === 0 ? 'What speaks for it' : 'And for the next', writer.tree(explanation(diagnosis, cause), 2)),
      ),
    section(
      'Sources',
      writer.sources().flatMap((source, i) => wrap(source, width, `  ${`${i + 1}`.padStart(2)} `)),
    ),
    spread(`Visit ${visit.id}`, `twin ${diagnosis.twin}, calibration ${diagnosis.calibration}`, width),
  )
}

function causes({ singles, pairs, pairShare }: Diagnosis, words: (statement: Statement) => string): readonly string[] {
  const rows = singles
    .filter(({ probability }, i) => i < EXPLAINED || probability >= 0.01)
    .map(({ cause, probability }) => [`  ${percent(probability)}`, words(CAUSE_WORDS[cause].label)])
  const [pair] = pairs
  const together = pair
    ? [
        [
          `  ${percent(pairShare)}`,
          `that it is two: ${pair.causes.map((c) => words(CAUSE_WORDS[c].label)).join(' and ')} first of all`,
        ],
      ]
    : []
  return columns([...rows, ...together], ['right', 'left'])
}

function charge({ charge: { mean, low, high } }: Diagnosis): string {
  const signed = (share: number) => `${share < 0 ? '−' : '+'}${Math.abs(100 * share).toFixed(0)} %`
  return `${signed(mean)} against the right charge; ${signed(low)} to ${signed(high)} in nine of ten such cases.`
}

const percent = (share: number) => (share < 0.005 ? '< 1 %' : `${(100 * share).toFixed(0)} %`)
