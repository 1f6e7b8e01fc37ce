import { sitePressure } from '@chargewright/charging'
import { fail, ok, type Problem, type Result, type UnitPreference } from '@chargewright/quantity'
import { type Check, cylinderChecks, evacuationCheck, standingTestCheck } from '@chargewright/report'
import type { Visit } from '@chargewright/visit'
import { cylinders } from './cylinders.ts'
import { evacuation } from './evacuation.ts'
import { pressureTest } from './pressure-test.ts'

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
    log === undefined ? ok([]) : under('evacuation', evacuationChecks(log, units)),
    book === undefined ? ok([]) : under('cylinders', bookChecks(book, units)),
  ]
  const problems = made.flatMap((each) => (each.ok ? [] : each.error))
  return problems.length > 0 ? fail(problems) : ok(made.flatMap((each) => (each.ok ? each.value : [])))
}

/** Beside a visit file, `line 2` alone would not say of what. */
const under = <Value>(flag: string, made: Result<Value, readonly Problem[]>): Result<Value, readonly Problem[]> =>
  made.ok ? made : fail(made.error.map((problem) => ({ ...problem, field: `${flag}, ${problem.field}` })))

function pressureTestCheck(typed: readonly string[], visit: Visit): Result<readonly Check[], readonly Problem[]> {
  const answer = pressureTest(typed, {}, ok(sitePressure(visit, []).quantity))
  return answer.ok ? ok([standingTestCheck(answer.value)]) : answer
}

function evacuationChecks(log: string, units: UnitPreference): Result<readonly Check[], readonly Problem[]> {
  const finding = evacuation(log, { criterion: 'specification' })
  return finding.ok ? ok([evacuationCheck(finding.value, units)]) : finding
}

function bookChecks(book: unknown, units: UnitPreference): Result<readonly Check[], readonly Problem[]> {
  const answer = cylinders(book)
  return answer.ok ? ok(cylinderChecks(answer.value.balance, units)) : answer
}
