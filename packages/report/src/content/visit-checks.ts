import { sitePressure } from '@chargewright/charging'
import { type BookBalance, type BookFinding, balanceBook, bookOfVisit, bookUnits } from '@chargewright/ledger'
import { evidence, problemStatement, type Statement, say, type UnitPreference, verbatim } from '@chargewright/quantity'
import {
  type EvacuationFinding,
  HOLD_WORDS,
  PRESSURE_TEST_WORDS,
  pressureTestOfVisit,
  type StandingTest,
  vacuumTestOfVisit,
  vacuumUnits,
} from '@chargewright/tightness'
import type { Visit } from '@chargewright/visit'
import type { Check } from './check.ts'
import { compressorChecks, supplyChecks } from './compressor-checks.ts'
import { notJudged } from './not-judged.ts'

/** What the entries of a visit say of its tests, its compressor and its cylinders, in the order of the work. */
export function visitChecks(visit: Visit, preference: UnitPreference): readonly Check[] {
  const atmosphere = sitePressure(visit, []).quantity
  const standing = visit.pressureTests.map((test) => {
    const judged = pressureTestOfVisit(test, atmosphere)
    return { ...(judged.ok ? standingTestCheck(judged.value) : notJudged(STANDING, judged.error)), at: test.at }
  })
  const vacuum = visit.vacuumTests.map((test) => {
    const judged = vacuumTestOfVisit(test)
    const check = judged.ok ? evacuationCheck(judged.value.finding, preference) : notJudged(EVACUATION, judged.error)
    return { ...check, at: test.at }
  })
  const book = visit.cylinders.length === 0 ? [] : cylinderChecks(balanceBook(bookOfVisit(visit).book), preference)
  return [...standing, ...vacuum, ...supplyChecks(visit), ...compressorChecks(visit), ...book]
}

const STANDING = say`Standing pressure test`
const EVACUATION = say`Evacuation`

/** A standing test by its last reading, with what those before it said. */
export function standingTestCheck({ findings, last }: StandingTest): Check {
  const before = findings.slice(0, -1).map(({ after, finding }) => evidence(say`After ${after}: ${finding.sentence}`))
  const { kind, sentence, reasons } = last
  return { title: STANDING, verdict: say`${PRESSURE_TEST_WORDS[kind]}`, sentence, reasons: [...reasons, ...before] }
}

export function evacuationCheck(finding: EvacuationFinding, preference: UnitPreference): Check {
  const { kind, sentence, reasons } = finding
  return { title: EVACUATION, verdict: say`${HOLD_WORDS[kind]}`, sentence, reasons, units: vacuumUnits(preference) }
}

/** One for each cylinder, and one for what the book holds and cannot count. */
export function cylinderChecks(balance: BookBalance, preference: UnitPreference): readonly Check[] {
  const accounts = balance.cylinders.map(({ cylinder, refrigerants, content, unexplained }): Check => {
    const found = balance.findings.filter((finding) => finding.cylinder === cylinder.id)
    return {
      title: say`Cylinder ${verbatim(cylinder.id)}, ${HOLDS[cylinder.holds]} ${verbatim(refrigerants.join(' + '))}`,
      verdict: balanceVerdict(found),
      sentence: say`Holds ${content}, unexplained ${unexplained}`,
      reasons: found.map(({ sentence, source }) => evidence(sentence, source)),
      units: bookUnits(preference),
    }
  })
  const leftOut: Check = {
    title: say`Cylinder book`,
    verdict: say`not whole`,
    sentence: say`Left out of the balance, because it cannot stand`,
    reasons: balance.problems.map((problem) => evidence(problemStatement(problem))),
  }
  return balance.problems.length === 0 ? accounts : [...accounts, leftOut]
}

const HOLDS = { new: say`new`, recovered: say`recovered` } as const

function balanceVerdict(found: readonly BookFinding[]): Statement {
  if (found.length === 0) return say`adds up`
  return found.some(({ severity }) => severity === 'stop') ? say`must not be` : say`to be cleared up`
}
