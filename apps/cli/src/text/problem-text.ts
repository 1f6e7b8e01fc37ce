import { describeProblem, format, INCH_POUND, METRIC, type Problem, quantity } from '@chargewright/quantity'

const SHOWN_AS = { Pa: 'absolute pressure', K: 'temperature' } as const

/** A problem as a sentence; a range that the equations gave in SI is told in the units of both trades as well. */
export function problemText(problem: Problem): string {
  const sentence = describeProblem(problem)
  if (problem.kind !== 'out-of-range' || !(problem.unit === 'Pa' || problem.unit === 'K')) return sentence
  const dimension = SHOWN_AS[problem.unit]
  const range = (units: typeof METRIC) =>
    `${format(quantity(dimension, problem.min), units)} to ${format(quantity(dimension, problem.max), units)}`
  return `${sentence} (${range(INCH_POUND)}, ${range(METRIC)})`
}
