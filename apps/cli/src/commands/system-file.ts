import { fail, ok, type Problem, type Result } from '@chargewright/quantity'
import { checkVisitFile, fold, type Visit } from '@chargewright/visit'

/**
 * Reads a system: its facts as `system-described` states them in a visit, or a whole visit file, whose readings then say
 * in what weather it runs.
 *
 * @param data a JSON value
 */
export function readSystemFile(data: unknown): Result<Visit, readonly Problem[]> {
  if (isVisitFile(data)) {
    const file = checkVisitFile(data)
    return file.ok ? ok(fold(file.value)) : file
  }
  const file = checkVisitFile({
    format: 'chargewright-visit',
    version: 1,
    id: 'system',
    events: [{ id: 'system', at: NO_TIME, kind: 'system-described', facts: data }],
  })
  if (!file.ok) return fail(file.error.map(ofSystem))
  const visit = fold(file.value)
  // Of a visit an entry that cannot be read is left out; here there is nothing beside it.
  return visit.problems.length > 0 ? fail(visit.problems.map(({ problem }) => problem)) : ok(visit)
}

/** Facts have no time; nothing that is asked here looks at it. */
const NO_TIME = '1970-01-01T00:00:00Z'

const isVisitFile = (data: unknown) =>
  typeof data === 'object' && data !== null && (Object.hasOwn(data, 'format') || Object.hasOwn(data, 'events'))

/** Facts stand alone in their file, so their path does not lead through an event. */
const ofSystem = (problem: Problem): Problem => ({
  ...problem,
  field: problem.field.replace(/^events\[0\]\.facts\.?/, '') || 'system',
})
