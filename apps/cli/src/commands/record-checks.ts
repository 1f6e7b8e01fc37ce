import { sitePressure } from '@chargewright/charging'
import type { BookFinding } from '@chargewright/ledger'
import {
  describeProblem,
  evidence,
  fail,
  ok,
  type Problem,
  type Result,
  say,
  type UnitPreference,
} from '@chargewright/quantity'
import type { Check } from '@chargewright/report'
import { vacuumUnits } from '@chargewright/tightness'
import type { Visit } from '@chargewright/visit'
import { cylinders } from './cylinders.ts'
import { bookUnits } from './cylinders-text.ts'
import { evacuation } from './evacuation.ts'
import { EVACUATION_WORDS } from './evacuation-text.ts'
import { pressureTest } from './pressure-test.ts'
import { PRESSURE_TEST_WORDS } from './pressure-test-text.ts'

/** What the checks of a record are made from. */
export interface CheckSources {
  /** Readings as `pressure-test` takes them. */
  readonly pressureTest?: readonly string[] | undefined
  /** CSV of a vacuum gauge, judged by the specification on file. */
  readonly evacuation?: string | undefined
  /** A cylinder book, as its JSON was parsed. */
  readonly cylinders?: unknown
}

/** The answers of `pressure-test`, `evacuation` and `cylinders` as checks of a record, in the order of the work. */
export function recordChecks(
  visit: Visit,
  sources: CheckSources,
  units: UnitPreference,
): Result<readonly Check[], readonly Problem[]> {
  const { pressureTest: readings, evacuation: log, cylinders: book } = sources
  const made: readonly Result<readonly Check[], readonly Problem[]>[] = [
    readings === undefined ? ok([]) : under('pressure-test', pressureTestCheck(readings, visit)),
    log === undefined ? ok([]) : under('evacuation', evacuationCheck(log, units)),
    book === undefined ? ok([]) : under('cylinders', cylinderChecks(book, units)),
  ]
  const problems = made.flatMap((each) => (each.ok ? [] : each.error))
  return problems.length > 0 ? fail(problems) : ok(made.flatMap((each) => (each.ok ? each.value : [])))
}

/** Beside a visit file, `line 2` alone would not say of what. */
const under = <Value>(flag: string, made: Result<Value, readonly Problem[]>): Result<Value, readonly Problem[]> =>
  made.ok ? made : fail(made.error.map((problem) => ({ ...problem, field: `${flag}, ${problem.field}` })))

function pressureTestCheck(typed: readonly string[], visit: Visit): Result<readonly Check[], readonly Problem[]> {
  const answer = pressureTest(typed, {}, ok(sitePressure(visit, []).quantity))
  if (!answer.ok) return answer
  const { findings, last } = answer.value
  const before = findings.slice(0, -1).map(({ after, finding }) => evidence(say`After ${after}: ${finding.sentence}`))
  const { kind, sentence, reasons } = last
  const verdict = PRESSURE_TEST_WORDS[kind]
  return ok([{ title: 'Standing pressure test', verdict, sentence, reasons: [...reasons, ...before] }])
}

function evacuationCheck(log: string, units: UnitPreference): Result<readonly Check[], readonly Problem[]> {
  const finding = evacuation(log, { criterion: 'specification' })
  if (!finding.ok) return finding
  const { kind, sentence, reasons } = finding.value
  return ok([{ title: 'Evacuation', verdict: EVACUATION_WORDS[kind], sentence, reasons, units: vacuumUnits(units) }])
}

/** One for each cylinder, and one for what the book holds and cannot count. */
function cylinderChecks(book: unknown, units: UnitPreference): Result<readonly Check[], readonly Problem[]> {
  const answer = cylinders(book)
  if (!answer.ok) return answer
  const { balance } = answer.value
  const weighed = bookUnits(units)
  const accounts = balance.cylinders.map(({ cylinder, refrigerants, content, unexplained }): Check => {
    const found = balance.findings.filter((finding) => finding.cylinder === cylinder.id)
    return {
      title: `Cylinder ${cylinder.id}, ${cylinder.holds} ${refrigerants.join(' + ')}`,
      verdict: balanceVerdict(found),
      sentence: say`Holds ${content}, unexplained ${unexplained}`,
      reasons: found.map(({ sentence, source }) => evidence(sentence, source)),
      units: weighed,
    }
  })
  const leftOut: Check = {
    title: 'Cylinder book',
    verdict: 'not whole',
    sentence: say`Left out of the balance, because it cannot stand`,
    reasons: balance.problems.map((problem) => evidence(say`${describeProblem(problem)}`)),
  }
  return ok(balance.problems.length === 0 ? accounts : [...accounts, leftOut])
}

function balanceVerdict(found: readonly BookFinding[]): string {
  if (found.length === 0) return 'adds up'
  return found.some(({ severity }) => severity === 'stop') ? 'must not be' : 'to be cleared up'
}
