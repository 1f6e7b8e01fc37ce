export { describeProblem, outOfRange, type Problem } from './problem.ts'
export { fail, ok, type Result } from './result.ts'
export { type Kelvin, kelvin, type Pascal, pascal } from './si.ts'
