import { describeProblem, type Problem } from '@chargewright/quantity'

/**
 * A problem as `--json` and `--batch` print it: its own fields, and the sentence that the plain output shows. JSON has
 * no NaN and no infinity; such a value is given as its name.
 */
export function problemJson(problem: Problem): object {
  const { value } = problem
  const named = typeof value === 'number' && !Number.isFinite(value) ? String(value) : value
  return { ...problem, value: named, message: describeProblem(problem) }
}
