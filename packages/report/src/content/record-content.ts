import { type Assessment, entryLabel, FINDINGS, METHODS } from '@chargewright/charging'
import { render, type UnitPreference } from '@chargewright/quantity'
import type { Visit } from '@chargewright/visit'
import { type Check, checkInWords } from './check.ts'
import { citations } from './citations.ts'
import { evidenceLines } from './evidence-lines.ts'
import { measureRows, readingRows } from './reading-rows.ts'
import { correctionRows, doubtLines, happeningRows, problemLines } from './remarks.ts'
import { type SystemRow, systemRows } from './system-rows.ts'
import { zoneOf } from './time-in-words.ts'
import { visitChecks } from './visit-checks.ts'
import { cylinderRows, moveRows } from './weight-rows.ts'

/** What a record is made with, beside the visit and its answer. */
export interface RecordOptions {
  readonly preference: UnitPreference
  /** When the record is made, ISO 8601: the only time in it that does not come from the visit. */
  readonly created: string
  /** On the visit file itself, for instance that its figures are invented. */
  readonly about?: string
  /** How many earlier visits to the system taught something that the answer was found with. */
  readonly learntFrom?: number
  /** Else Letter where temperatures are shown in °F, and A4. */
  readonly paper?: 'A4' | 'LETTER'
  /** What was checked and has no entries in the visit, after what has. */
  readonly checks?: readonly Check[]
}

/** Everything that a service record says, as plain data: the PDF, the CSV and the JSON are three prints of it. */
export type RecordContent = ReturnType<typeof recordContent>

const NOTE =
  'Readings are as typed by the technician; everything else is computed from them. ± is about 95 %. The maker’s instructions, local codes and a licence come first.'

export function recordContent(visit: Visit, assessment: Assessment, options: RecordOptions) {
  const { preference, created, about, learntFrom = 0 } = options
  const checks = [...visitChecks(visit, preference), ...(options.checks ?? [])]
  const { finding, method } = assessment
  const words = citations()
  const say = (statement: Parameters<typeof render>[0]) => render(statement, preference)
  const times = visit.log.map(({ at }) => at)
  const readings = readingRows(visit, preference, words)
  return {
    system: {
      name: visit.system.facts.name ?? 'System without a name',
      rows: [...systemRows(visit.system, preference), ...learntRow(learntFrom)],
    },
    visit: {
      id: visit.id,
      from: times[0] ?? '',
      to: times.at(-1) ?? '',
      by: [...new Set(visit.log.flatMap(({ by }) => by ?? []))],
      zone: zoneOf(times),
      ...(about === undefined ? {} : { about }),
    },
    finding: {
      kind: finding.kind,
      word: FINDINGS[finding.kind],
      sentence: say(finding.sentence),
      reasons: evidenceLines(finding.reasons, preference, words),
      steps: finding.steps.map(say),
      next: finding.next.map(({ entry, why }) => `${entryLabel(entry)}: ${say(why)}`),
    },
    ...(method ? { method: { name: METHODS[method.id], because: say(method.because.statement) } } : {}),
    conditions: assessment.conditions.map(({ state, evidence, remedy }) => ({
      state,
      statement: say(evidence.statement),
      ...(evidence.source === undefined ? {} : { source: words.cite(evidence.source) }),
      ...(remedy ? { remedy: say(remedy) } : {}),
    })),
    lookAlikes: assessment.lookAlikes.map(({ label, verdict, evidence }) => ({
      label: say(label),
      verdict,
      statement: say(evidence.statement),
    })),
    cautions: assessment.cautions.map(({ statement, source }) => ({
      statement: say(statement),
      source: words.cite(source),
    })),
    readings,
    measures: measureRows(assessment, visit, preference),
    happenings: happeningRows(visit),
    moves: moveRows(visit, preference),
    cylinders: cylinderRows(visit, preference),
    corrections: correctionRows(visit),
    problems: problemLines(assessment),
    doubts: doubtLines(assessment),
    ...(checks.length === 0 ? {} : { checks: checks.map((check) => checkInWords(check, preference, words)) }),
    sources: words.sources(),
    created,
    rules: assessment.version,
    note: NOTE,
  }
}

const learntRow = (visits: number): readonly SystemRow[] =>
  visits === 0 ? [] : [{ label: 'Visits it is known from', value: String(visits) }]
