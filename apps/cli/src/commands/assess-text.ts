import {
  type Condition,
  entryLabel,
  FINDINGS,
  type FindingKind,
  type LookAlike,
  METHODS,
  type NextEntry,
} from '@chargewright/charging'
import { describeProblem, render, type Statement, type UnitPreference } from '@chargewright/quantity'
import type { EntryProblem } from '@chargewright/visit'
import { evidenceWriter } from '../text/evidence-writer.ts'
import { page, section, spread } from '../text/page.ts'
import { wrap } from '../text/wrap.ts'
import type { AssessAnswer } from './assess.ts'

/** The signs of the findings, the same wherever a finding is shown. */
const MARKS: Readonly<Record<FindingKind, string>> = {
  add: '+',
  recover: '−',
  hold: '=',
  'not-the-charge': '≠',
  'not-ready': '…',
  'cannot-tell': '?',
}

const CONDITION_WORDS: Readonly<Record<Condition['state'], string>> = {
  met: 'met',
  doubtful: 'in doubt',
  unmet: 'not met',
  unknown: 'not known',
}

const VERDICT_WORDS: Readonly<Record<LookAlike['verdict'], string>> = {
  explains: 'explains it',
  excluded: 'excluded',
  open: 'still open',
  unlikely: 'unlikely',
}

const INDENT = 2
/** Where the text begins behind the word for a condition or a cause. */
const JUDGED = 15

/** An assessment as a page for the terminal: the finding first, then why, then what else was considered. */
export function assessText({ visit, assessment }: AssessAnswer, units: UnitPreference, width: number): string {
  const { finding, method } = assessment
  const writer = evidenceWriter(units, width)
  const words = (statement: Statement) => render(statement, units)
  const item = (mark: string, text: string) => wrap(text, width, `${' '.repeat(INDENT)}${mark} `)
  const next = ({ entry, why }: NextEntry) => item('·', `${entryLabel(entry)}: ${words(why)}`)
  const questioned = ({ eventId, problem }: EntryProblem) =>
    item('·', `${describeProblem(problem)}${eventId === '' ? '' : ` (entry ${eventId})`}`)
  const lookAlike = (l: LookAlike) => [
    ...wrap(words(l.label), width, ' '.repeat(JUDGED)),
    ...writer.tree(l.evidence, JUDGED),
  ]

  return page(
    [
      ...spread(
        `${MARKS[finding.kind]} ${FINDINGS[finding.kind]}`,
        method ? METHODS[method.id] : 'no method yet',
        width,
      ),
      ...wrap(`${words(finding.sentence)}.`, width, ' '.repeat(INDENT)),
    ],
    section(
      'Do',
      finding.steps.flatMap((step, i) => item(`${i + 1}.`, words(step))),
    ),
    section('Enter next', finding.next.flatMap(next)),
    section('Left out, because it cannot be read', assessment.problems.flatMap(questioned)),
    section('In doubt, but used', assessment.doubts.flatMap(questioned)),
    section(
      'Because',
      finding.reasons.flatMap((reason) => writer.tree(reason, INDENT)),
    ),
    section('Method', method ? writer.tree(method.because, INDENT) : []),
    section(
      'Conditions',
      assessment.conditions.flatMap((c) => judged(CONDITION_WORDS[c.state], writer.tree(c.evidence, JUDGED))),
    ),
    section(
      'Could look the same',
      assessment.lookAlikes.flatMap((l) => judged(VERDICT_WORDS[l.verdict], lookAlike(l))),
    ),
    section(
      'Take care',
      assessment.cautions.flatMap((c) => item('!', `${words(c.statement)}\u00a0${writer.cite(c.source)}`)),
    ),
    section(
      'Sources',
      writer.sources().flatMap((source, i) => item(`${i + 1}`.padStart(2), source)),
    ),
    spread(`Visit ${visit.id}`, `rules ${assessment.version}`, width),
  )
}

/** Puts the word into the space in front of the first line. */
function judged(word: string, [first = '', ...rest]: readonly string[]): readonly string[] {
  return [`${' '.repeat(INDENT)}${word}`.padEnd(JUDGED) + first.trimStart(), ...rest]
}
