import { INCH_POUND, METRIC, type Problem, type Result } from '@chargewright/quantity'
import { problemJson } from '../src/problem-json.ts'
import type { Forms } from '../src/verbs/declaring.ts'

/**
 * What is wrong with an answer or a refusal, nothing when it is whole: an answer can be written in both forms and both
 * systems of units without a number that is none; a refusal names field, value and what would have been accepted.
 */
export function defectsOfAnswer<Answer>(
  answer: Result<Answer, readonly Problem[]>,
  { text, json }: Forms<Answer>,
  input: unknown,
): readonly unknown[] {
  if (!answer.ok) {
    return answer.error.length === 0
      ? ['no problem named']
      : answer.error.map(defectOf).filter((each) => each !== undefined)
  }
  return [INCH_POUND, METRIC].flatMap((units) => {
    const page = text(answer.value, units, 80)
    const printed = JSON.stringify(json(answer.value, units))
    return [
      // What was typed may say anything, and is said again.
      ...(NONSENSE.test(page) && !NONSENSE.test(JSON.stringify(input)) ? [page] : []),
      ...(/:null[,}]/.test(printed) ? [printed] : []),
    ]
  })
}

const NONSENSE = /\bNaN\b|\bundefined\b|Infinity|\[object/

/** What a problem lacks, as it is printed. */
export const defectOf = (problem: Problem) => defectOfPrinted(JSON.parse(JSON.stringify(problemJson(problem))))

/** What a printed problem lacks, with the problem; nothing when it is whole. */
export function defectOfPrinted(problem: Readonly<Record<string, unknown>>): unknown {
  const { kind, field, value, message, accepted, min, max, unit } = problem
  const names = typeof field === 'string' && field !== '' && field !== 'chargewright'
  const quotes = typeof value === 'number' || (typeof value === 'string' && value.length <= 100)
  const tells =
    kind === 'out-of-range'
      ? typeof min === 'number' && typeof max === 'number' && typeof unit === 'string'
      : typeof accepted === 'string' && accepted !== ''
  const reads = typeof message === 'string' && message.startsWith(`${field}:`)
  return names && quotes && tells && reads ? undefined : problem
}
