import {
  type Condition,
  entryLabel,
  FINDINGS,
  type FindingKind,
  type LookAlike,
  METHODS,
  type NextEntry,
} from '@chargewright/charging'
import {
  inEnglish,
  problemStatement,
  say,
  teller,
  type UnitPreference,
  verbatim,
  type Words,
} from '@chargewright/quantity'
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
export function assessText(
  { visit, assessment }: AssessAnswer,
  units: UnitPreference,
  width: number,
  words: Words = inEnglish,
): string {
  const { finding, method } = assessment
  const writer = evidenceWriter(units, width, words)
  const tell = teller(units, words)
  const item = (mark: string, text: string) => wrap(text, width, `${' '.repeat(INDENT)}${mark} `)
  const next = ({ entry, why }: NextEntry) =>
    item('·', tell(say`${entryLabel(entry)} (${verbatim(entry.what)}): ${why}`))
  const questioned = ({ eventId, problem }: EntryProblem) => {
    const told = problemStatement(problem)
    return item('·', tell(eventId === '' ? told : say`${told} (entry ${verbatim(eventId)})`))
  }
  const lookAlike = (l: LookAlike) => [
    ...wrap(tell(l.label), width, ' '.repeat(JUDGED)),
    ...writer.tree(l.evidence, JUDGED),
  ]

  return page(
    [
      ...spread(
        `${MARKS[finding.kind]} ${words(FINDINGS[finding.kind])}`,
        words(method ? METHODS[method.id] : 'no method yet'),
        width,
      ),
      ...wrap(`${tell(finding.sentence)}.`, width, ' '.repeat(INDENT)),
    ],
    section(
      words('Do'),
      finding.steps.flatMap((step, i) => item(`${i + 1}.`, tell(step))),
    ),
    section(words('Enter next'), finding.next.flatMap(next)),
    section(words('Left out, because it cannot be read'), assessment.problems.flatMap(questioned)),
    section(words('In doubt, but used'), assessment.doubts.flatMap(questioned)),
    section(
      words('Because'),
      finding.reasons.flatMap((reason) => writer.tree(reason, INDENT)),
    ),
    section(words('Method'), method ? writer.tree(method.because, INDENT) : []),
    section(
      words('Conditions'),
      assessment.conditions.flatMap((c) => judged(words(CONDITION_WORDS[c.state]), writer.tree(c.evidence, JUDGED))),
    ),
    section(
      words('Could look the same'),
      assessment.lookAlikes.flatMap((l) => judged(words(VERDICT_WORDS[l.verdict]), lookAlike(l))),
    ),
    section(
      words('Take care'),
      assessment.cautions.flatMap((c) => item('!', `${tell(c.statement)}\u00a0${writer.cite(c.source)}`)),
    ),
    section(
      words('Sources'),
      writer.sources().flatMap((source, i) => item(`${i + 1}`.padStart(2), source)),
    ),
    spread(tell(say`Visit ${verbatim(visit.id)}`), tell(say`rules ${verbatim(assessment.version)}`), width),
  )
}

/** Puts the word into the space in front of the first line. */
function judged(word: string, [first = '', ...rest]: readonly string[]): readonly string[] {
  return [`${' '.repeat(INDENT)}${word}`.padEnd(JUDGED) + first.trimStart(), ...rest]
}
