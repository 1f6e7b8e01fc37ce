import { type Assessment, assess, type LearntTwin, learntTwin } from '@chargewright/charging'
import { fail, ok, type Problem, type Result, type Statement, say } from '@chargewright/quantity'
import { findRefrigerant } from '@chargewright/refrigerant'
import { checkVisitFile, fold, type Visit } from '@chargewright/visit'

/** How much to move, or why nothing; and what the readings taught of this system. */
export interface DoseAnswer {
  readonly visit: Visit
  readonly assessment: Assessment
  readonly learnt: Result<LearntTwin, Statement>
}

/** @param data a visit file, as its JSON was parsed */
export function dose(data: unknown): Result<DoseAnswer, readonly Problem[]> {
  const file = checkVisitFile(data)
  if (!file.ok) return file
  const visit = fold(file.value)
  return ok({ visit, assessment: assess(visit), learnt: learntFrom(visit) })
}

function learntFrom(visit: Visit): Result<LearntTwin, Statement> {
  const { refrigerant: name } = visit.system.facts
  const refrigerant = name === undefined ? undefined : findRefrigerant(name)
  if (!refrigerant?.ok) return fail(say`the refrigerant is not known`)
  return learntTwin({ visit, refrigerant: refrigerant.value })
}
