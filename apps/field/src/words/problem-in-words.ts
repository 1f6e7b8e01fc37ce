import { METRIC, type Problem, problemStatement, render, translated } from '@chargewright/quantity'
import { t } from './t.ts'

/** What is wrong, as one sentence in the language of the page. */
export function problemInWords(problem: Problem): string {
  return render(translated(problemStatement(problem), t), METRIC)
}
