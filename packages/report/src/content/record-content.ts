import { type Assessment, entryLabel, FINDINGS, METHODS } from '@chargewright/charging'
import { say, type Tell, teller, type UnitPreference } from '@chargewright/quantity'
import type { Visit } from '@chargewright/visit'
import { type Check, checkInWords } from './check.ts'
import { citations } from './citations.ts'
import { evidenceLines } from './evidence-lines.ts'
import { ENGLISH, type Language } from './language.ts'
import { measureRows, readingRows } from './reading-rows.ts'
import { correctionRows, doubtLines, happeningRows, problemLines } from './remarks.ts'
import { type SystemRow, systemRows } from './system-rows.ts'
import { commonOffset, zoneOf } from './time-in-words.ts'
import { visitChecks } from './visit-checks.ts'
import { cylinderRows, moveRows } from './weight-rows.ts'

/** What a record is made with, beside the visit and its answer. */
export interface RecordOptions {
  readonly preference: UnitPreference
  /** Else English. What was typed stays as it was typed, and so do the names of all fields. */
  readonly language?: Language
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

const NOTE = say`Readings are as typed by the technician; everything else is computed from them. ± is about 95 %. The maker’s instructions, local codes and a licence come first.`

export function recordContent(visit: Visit, assessment: Assessment, options: RecordOptions) {
  const { preference, created, about, learntFrom = 0, language = ENGLISH } = options
  const { tag, words } = language
  const tell = teller(preference, words)
  const checks = [...visitChecks(visit, preference), ...(options.checks ?? [])]
  const { finding, method } = assessment
  const citing = citations(words)
  const times = visit.log.map(({ at }) => at)
  const offset = commonOffset(times)
  const readings = readingRows(visit, preference, tell, words, citing)
  return {
    system: {
      name: visit.system.facts.name ?? tell(say`System without a name`),
      rows: [...systemRows(visit.system, preference, tell), ...learntRow(learntFrom, tell)],
    },
    visit: {
      id: visit.id,
      from: times[0] ?? '',
      to: times.at(-1) ?? '',
      by: [...new Set(visit.log.flatMap(({ by }) => by ?? []))],
      zone: zoneOf(times, tell),
      ...(offset === undefined ? {} : { offset }),
      ...(about === undefined ? {} : { about }),
    },
    finding: {
      kind: finding.kind,
      word: tell(say`${FINDINGS[finding.kind]}`),
      sentence: tell(finding.sentence),
      reasons: evidenceLines(finding.reasons, tell, citing),
      steps: finding.steps.map(tell),
      next: finding.next.map(({ entry, why }) => tell(say`${entryLabel(entry)}: ${why}`)),
    },
    ...(method ? { method: { name: tell(say`${METHODS[method.id]}`), because: tell(method.because.statement) } } : {}),
    conditions: assessment.conditions.map(({ state, evidence, remedy }) => ({
      state,
      statement: tell(evidence.statement),
      ...(evidence.source === undefined ? {} : { source: citing.cite(evidence.source) }),
      ...(remedy ? { remedy: tell(remedy) } : {}),
    })),
    lookAlikes: assessment.lookAlikes.map(({ label, verdict, evidence }) => ({
      label: tell(label),
      verdict,
      statement: tell(evidence.statement),
    })),
    cautions: assessment.cautions.map(({ statement, source }) => ({
      statement: tell(statement),
      source: citing.cite(source),
    })),
    readings,
    measures: measureRows(assessment, visit, preference, tell, words),
    happenings: happeningRows(visit, tell),
    moves: moveRows(visit, preference, tell),
    cylinders: cylinderRows(visit, preference, tell),
    corrections: correctionRows(visit, tell),
    problems: problemLines(assessment, tell),
    doubts: doubtLines(assessment, tell),
    ...(checks.length === 0 ? {} : { checks: checks.map((check) => checkInWords(check, preference, words, citing)) }),
    sources: citing.sources(),
    created,
    rules: assessment.version,
    note: tell(NOTE),
    language: tag,
  }
}

const learntRow = (visits: number, tell: Tell): readonly SystemRow[] =>
  visits === 0 ? [] : [{ what: 'learntFrom', label: tell(say`Visits it is known from`), value: String(visits) }]
