import { type Assessment, assess as assessVisit } from '@chargewright/charging'
import { ok, type Problem, type Result } from '@chargewright/quantity'
import { checkVisitFile, fold, readVisitFile, type Visit, type VisitFile } from '@chargewright/visit'

/** A visit and what follows from it. */
export interface AssessAnswer {
  readonly visit: Visit
  readonly assessment: Assessment
  /** On the file itself, for instance that its figures are invented. */
  readonly about?: string
}

/** Assesses a visit file from its JSON text. */
export function assess(json: string): Result<AssessAnswer, readonly Problem[]> {
  return answer(readVisitFile(json))
}

/** The same for a file that is already an object, as in a batch. */
export function assessObject(input: unknown): Result<AssessAnswer, readonly Problem[]> {
  return answer(checkVisitFile(input))
}

function answer(file: Result<VisitFile, readonly Problem[]>): Result<AssessAnswer, readonly Problem[]> {
  if (!file.ok) return file
  const visit = fold(file.value)
  const { about } = file.value
  return ok({ visit, assessment: assessVisit(visit), ...(about === undefined ? {} : { about }) })
}
