import { type Dimension, type Problem, quantity, say, type UnitPreference } from '@chargewright/quantity'
import { problemInWords } from '../words/problem-in-words.ts'
import { inWords } from './in-words.ts'

/** What a limit found in SI is a limit of: the property functions know no gauge, so a pressure is absolute there. */
const OF_SI = { Pa: 'absolute pressure', K: 'temperature' } as const satisfies Record<string, Dimension>

/** What is wrong with a reading, in the units of the reader: a limit that a computation met is known in SI only. */
export function problemInUnits(problem: Problem, units: UnitPreference): string {
  if (problem.kind !== 'out-of-range' || !isSi(problem.unit)) return problemInWords(problem)
  const { field, value, min, max } = problem
  const dimension = OF_SI[problem.unit]
  const inSi = (si: number) => quantity(dimension, si)
  return inWords(say`${field}: ${inSi(value)} is outside ${inSi(min)} to ${inSi(max)}`, units)
}

const isSi = (unit: string): unit is keyof typeof OF_SI => Object.hasOwn(OF_SI, unit)
