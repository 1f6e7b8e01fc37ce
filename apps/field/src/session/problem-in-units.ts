import {
  type Dimension,
  findUnit,
  type Problem,
  quantity,
  say,
  toSi,
  type UnitPreference,
} from '@chargewright/quantity'
import { problemInWords } from '../words/problem-in-words.ts'
import { inWords } from './in-words.ts'

/** What a limit is of: the property functions know SI and no gauge, so a pressure is absolute there; a mass moved is told in ounces. */
const IS_OF = { Pa: ['absolute pressure', 'Pa a'], K: ['temperature', 'K'], oz: ['mass', 'oz'] } as const

/** What is wrong or doubtful, in the units of the reader: a limit that a computation met is known in one unit only. */
export function problemInUnits(problem: Problem, units: UnitPreference): string {
  if (problem.kind !== 'out-of-range' || !isOneOf(problem.unit)) return problemInWords(problem)
  const { field, value, min, max } = problem
  const [dimension, symbol]: readonly [Dimension, string] = IS_OF[problem.unit]
  const unit = findUnit(symbol, dimension)!
  const limit = (number: number) => quantity(dimension, toSi(number, unit))
  return inWords(say`${field}: ${limit(value)} is outside ${limit(min)} to ${limit(max)}`, units)
}

const isOneOf = (unit: string): unit is keyof typeof IS_OF => Object.hasOwn(IS_OF, unit)
