import { type Problem, problemStatement, type Statement, say } from '@chargewright/quantity'
import type { Check } from './check.ts'

/** A check that was begun, with what keeps it from a verdict: it is not left out. */
export const notJudged = (title: Statement, problem: Problem): Check => ({
  title,
  verdict: say`not judged`,
  sentence: problemStatement(problem),
  reasons: [],
})
