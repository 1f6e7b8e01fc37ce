export { type Evidence, evidence, type Measure } from './evidence.ts'
export { COVERAGE, format, formatNumber, formatUncertainty } from './format.ts'
export { type Catalogue, lookUp } from './look-up.ts'
export { type ParseOptions, parse } from './parse.ts'
export {
  INCH_POUND,
  METRIC,
  POUNDS_AND_OUNCES,
  preferredUnit,
  shownUnit,
  type UnitPreference,
} from './preference.ts'
export { atmosphericPressure, STANDARD_ATMOSPHERE, toAbsolute } from './pressure.ts'
export { describeProblem, outOfRange, type Problem, problemStatement } from './problem.ts'
export { add, type Dimension, inQuadrature, type Quantity, quantity, subtract } from './quantity.ts'
export { fail, ok, type Result } from './result.ts'
export { type Kelvin, kelvin, type Pascal, pascal } from './si.ts'
export { sourceInWords } from './source-in-words.ts'
export { render, type Statement, say, type Verbatim, verbatim } from './statement.ts'
export { holdsPlaces, inEnglish, type Tell, teller, translated, type Words } from './translate.ts'
export { findUnit, fromSi, toSi, type Unit, unitsOf } from './unit.ts'
