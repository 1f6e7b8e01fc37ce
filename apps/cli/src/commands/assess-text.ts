import {
  type Condition,
  FINDINGS,
  type FindingKind,
  type LookAlike,
  METHODS,
  type NextEntry,
} from '@chargewright/charging'
import { describeProblem, render, type Statement, type UnitPreference } from '@chargewright/quantity'
import type { EntryProblem } from '@chargewright/visit'
import { entryLabel } from '../entry-label.ts'
import { widthOf } from '../text/columns.ts'
import { evidenceTree } from '../text/evidence-tree.ts'
import { wrap } from '../text/wrap.ts'
import type { AssessAnswer } from './assess.ts'

/** The signs of the findings, the same wherever a finding is shown. */
export const MARKS: Readonly<Record<FindingKind, string>> = {
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
  explains: 'speaks for it',
  excluded: 'excluded',
  open: 'still open',
  unlikely: 'unlikely',
}

const INDENT = '  '

/** An assessment as a page for the terminal: the finding first, then why, then what else was considered. */
export function assessText({ visit, assessment }: AssessAnswer, units: UnitPreference, width: number): string {
  const { finding, method } = assessment
  const words = (statement: Statement) => render(statement, units)
  const tree = (evidence: Condition['evidence'], indent: number) => evidenceTree(evidence, units, width, indent)
  const entry = ({ entry, why }: NextEntry, mark: string) => wrap(`${entryLabel(entry)}: ${words(why)}`, width, mark)

  return page(
    [
      ...spread(
        `${MARKS[finding.kind]} ${FINDINGS[finding.kind]}`,
        method ? METHODS[method.id] : 'no method yet',
        width,
      ),
      ...wrap(`${words(finding.sentence)}.`, width, INDENT),
    ],
    section(
      'Do',
      finding.steps.flatMap((step, i) => wrap(words(step), width, `${INDENT}${i + 1}. `)),
    ),
    section(
      'Enter next',
      finding.next.flatMap((next) => entry(next, `${INDENT}· `)),
    ),
    section(
      'Because',
      finding.reasons.flatMap((reason) => tree(reason, INDENT.length)),
    ),
    section('Method', method ? tree(method.because, INDENT.length) : []),
    section(
      'Conditions',
      assessment.conditions.flatMap((c) => judged(CONDITION_WORDS[c.state], tree(c.evidence, JUDGED))),
    ),
    section(
      'Could look the same',
      assessment.lookAlikes.flatMap((l) => [
        ...judged(VERDICT_WORDS[l.verdict], wrap(words(l.label), width, ' '.repeat(JUDGED))),
        ...tree(l.evidence, JUDGED + INDENT.length),
      ]),
    ),
    section(
      'Left out, because it could not be read',
      assessment.problems.flatMap((p) => questioned(p, width)),
    ),
    section(
      'In doubt, but used',
      assessment.doubts.flatMap((d) => questioned(d, width)),
    ),
    section(
      'Take care',
      assessment.cautions.flatMap((c) => wrap(`${words(c.statement)} [${c.source}]`, width, `${INDENT}! `)),
    ),
    [...spread(`Visit ${visit.id}`, `rules ${assessment.version}`, width)],
  )
}

/** Width of the column in which the word for a condition or a cause stands. */
const JUDGED = 17

/** Puts the word in the space in front of the first line. */
function judged(word: string, [first = '', ...rest]: readonly string[]): readonly string[] {
  return [`${INDENT}${word}`.padEnd(JUDGED) + first.trimStart(), ...rest]
}

function questioned({ eventId, problem }: EntryProblem, width: number): readonly string[] {
  return wrap(`${describeProblem(problem)}${eventId === '' ? '' : ` (entry ${eventId})`}`, width, `${INDENT}· `)
}

/** One text at the left edge, one at the right, on one line where both fit. */
function spread(left: string, right: string, width: number): readonly string[] {
  const space = width - widthOf(left) - widthOf(right)
  return space < 2 ? [left, right] : [left + ' '.repeat(space) + right]
}

function section(title: string, lines: readonly string[]): readonly string[] {
  return lines.length === 0 ? [] : [title, ...lines]
}

/** The parts that have something to say, with a blank line between. */
function page(...parts: readonly (readonly string[])[]): string {
  const shown = parts.filter((part) => part.length > 0)
  return `${shown.map((part) => part.join('\n')).join('\n\n')}\n`
}
