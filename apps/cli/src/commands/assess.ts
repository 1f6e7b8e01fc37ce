import { type Assessment, assess as assessVisit } from '@chargewright/charging'
import { fail, ok, type Problem, type Result } from '@chargewright/quantity'
import { checkVisitFile, fold, readVisitFile, type Visit, type VisitFile } from '@chargewright/visit'

/** A visit and what follows from it. */
export interface AssessAnswer {
  readonly visit: Visit
  readonly assessment: Assessment
  /** The files of the visits to its system up to this one, the first one first. */
  readonly visits: readonly VisitFile[]
  /** How many of the earlier ones taught something that it was assessed with. */
  readonly learntFrom: number
  /** On the file itself, for instance that its figures are invented. */
  readonly about?: string
}

/**
 * Assesses a visit file from its JSON text.
 *
 * @param earlier visit files of the same system, the first one first: what they taught goes into the answer
 */
export function assess(json: string, earlier: readonly string[] = []): Result<AssessAnswer, readonly Problem[]> {
  const before = earlier.map((text, i) => under(`earlier visit ${i + 1}`, readVisitFile(text)))
  const problems = before.flatMap((file) => (file.ok ? [] : file.error))
  if (problems.length > 0) return fail(problems)
  return answer(
    readVisitFile(json),
    before.flatMap((file) => (file.ok ? [file.value] : [])),
  )
}

/** The same for a file that is already an object, as in a batch. */
export function assessObject(input: unknown): Result<AssessAnswer, readonly Problem[]> {
  return answer(checkVisitFile(input), [])
}

function answer(
  file: Result<VisitFile, readonly Problem[]>,
  earlier: readonly VisitFile[],
): Result<AssessAnswer, readonly Problem[]> {
  if (!file.ok) return file
  const visit = fold(file.value)
  const { about } = file.value
  const memory = taughtBy(earlier)
  return ok({
    visit,
    assessment: assessVisit(visit, [], memory),
    visits: [...earlier, file.value],
    learntFrom: memory?.visits ?? 0,
    ...(about === undefined ? {} : { about }),
  })
}

/** A visit in which no causes could be weighed teaches nothing. */
const taughtBy = (visits: readonly VisitFile[]) =>
  visits.reduce<Assessment['memory']>((memory, file) => assessVisit(fold(file), [], memory).memory ?? memory, undefined)

const under = <Value>(name: string, read: Result<Value, readonly Problem[]>): Result<Value, readonly Problem[]> =>
  read.ok ? read : fail(read.error.map((problem) => ({ ...problem, field: `${name}, ${problem.field}` })))
