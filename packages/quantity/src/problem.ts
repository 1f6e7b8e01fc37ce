import { METRIC } from './preference.ts'
import { render, type Statement, say } from './statement.ts'

/**
 * What is wrong with something that was entered or asked for. Every problem names the field, the value and what would
 * have been accepted, so that any screen, prompt or batch line can repeat it without knowing where it came from.
 */
export type Problem =
  | {
      readonly kind: 'out-of-range'
      /** What was asked for, in words or as a path: `temperature`, `events[3].value`. */
      readonly field: string
      readonly value: number
      readonly min: number
      readonly max: number
      readonly unit: string
    }
  | {
      /**
       * `unreadable`: not of the expected form. `ambiguous`: more than one reading is possible, so the person is
       * asked. `unknown`: not one of the known names. `missing`: needed and not given. `unsolved`: within range, but
       * a numerical method did not close; `accepted` then says which one and how far off it was.
       */
      readonly kind: 'unreadable' | 'ambiguous' | 'unknown' | 'missing' | 'unsolved'
      readonly field: string
      readonly value: string
      readonly accepted: string
    }

/** The problem as one sentence, in the units it was found in. */
export function describeProblem(problem: Problem): string {
  return render(problemStatement(problem), METRIC)
}

/** The same sentence with its parts apart, so that it can be said in another language. */
export function problemStatement(problem: Problem): Statement {
  const { field, value } = problem
  switch (problem.kind) {
    case 'out-of-range': {
      const { unit, min, max } = problem
      return say`${field}: ${digits(problem.value)} ${unit} is outside ${digits(min)} to ${digits(max)} ${unit}`
    }
    case 'unreadable':
      return say`${field}: cannot read “${value}”; expected ${problem.accepted}`
    case 'ambiguous':
      return say`${field}: “${value}” can be read in two ways; write ${problem.accepted}`
    case 'unknown':
      return say`${field}: “${value}” is not known; expected ${problem.accepted}`
    case 'missing':
      return say`${field}: missing; expected ${problem.accepted}`
    case 'unsolved':
      return say`${field}: no solution at ${value}; ${problem.accepted}`
  }
}

/** Checks a number against an inclusive range; NaN is out of range too. */
export function outOfRange(field: string, value: number, min: number, max: number, unit: string): Problem | undefined {
  return value >= min && value <= max ? undefined : { kind: 'out-of-range', field, value, min, max, unit }
}

/** Nine digits: all that anyone types, without the noise of a conversion (`295.3722222222222`). */
function digits(value: number): string {
  return String(Number(value.toPrecision(9)))
}
