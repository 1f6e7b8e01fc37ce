import {
  type Assessment,
  type Condition,
  entryLabel,
  FINDINGS,
  type LookAlike,
  type MethodId,
  type NextEntry,
} from '@chargewright/charging'
import {
  type Evidence,
  inEnglish,
  problemStatement,
  teller,
  type UnitPreference,
  type Words,
} from '@chargewright/quantity'
import type { EntryProblem } from '@chargewright/visit'
import { evidenceJson } from '../evidence-json.ts'
import { measureKey } from '../json-key.ts'
import { problemJson } from '../problem-json.ts'
import { cautionJson, inSi, optional } from '../quantity-json.ts'
import type { AssessAnswer } from './assess.ts'
import { stepJson } from './step-json.ts'

/**
 * An assessment as one JSON object; `docs/cli.md` describes it. Sentences are text in the units preferred, every
 * number stands beside them in SI under a key that carries its unit.
 */
export function assessJson(
  { visit, assessment }: AssessAnswer,
  units: UnitPreference,
  words: Words = inEnglish,
): object {
  const text = teller(units, words)
  const { finding, method } = assessment

  const evidence = (e: Evidence) => evidenceJson(e, units, words)
  const next = ({ entry, why }: NextEntry) => ({ ...entry, label: words(entryLabel(entry)), why: text(why) })
  const condition = (c: Condition) => ({
    id: c.id,
    state: c.state,
    evidence: evidence(c.evidence),
    ...optional('remedy', c.remedy && text(c.remedy)),
    ...optional('next', c.next && next(c.next)),
    ...optional('again', c.again?.map(next)),
  })
  const entryProblem = ({ eventId, problem }: EntryProblem) => ({
    event: eventId,
    ...problemJson(problem),
    message: text(problemStatement(problem)),
  })
  const lookAlike = (l: LookAlike) => ({
    id: l.id,
    label: text(l.label),
    verdict: l.verdict,
    evidence: evidence(l.evidence),
    ...optional('next', l.next && next(l.next)),
  })

  return {
    visit: visit.id,
    version: assessment.version,
    method: method ? { id: method.id, because: evidence(method.because) } : null,
    finding: {
      kind: finding.kind,
      word: words(FINDINGS[finding.kind]),
      sentence: text(finding.sentence),
      reasons: finding.reasons.map(evidence),
      steps: finding.steps.map(text),
      ...optional('dose', finding.dose && stepJson(finding.dose, units, words)),
      ...optional('cause', finding.cause && lookAlike(finding.cause)),
      next: finding.next.map(next),
    },
    measures: { ...measures(assessment), ...target(assessment) },
    conditions: assessment.conditions.map(condition),
    look_alikes: assessment.lookAlikes.map(lookAlike),
    cautions: assessment.cautions.map((each) => cautionJson(each, units, words)),
    problems: assessment.problems.map(entryProblem),
    doubts: assessment.doubts.map(entryProblem),
  }
}

const measures = ({ measures }: Assessment): object =>
  Object.assign({}, ...Object.entries(measures).map(([id, { quantity }]) => inSi(measureKey(id), quantity)))

const TARGET_NAMES: Readonly<Record<MethodId, string>> = {
  superheat: 'target_superheat',
  subcooling: 'target_subcooling',
  weight: 'target_charge',
  'sight-glass': 'target',
}

const target = ({ method, target }: Assessment): object =>
  method && target ? inSi(TARGET_NAMES[method.id], target.quantity) : {}
