import { expect, test } from 'vitest'
import { describeProblem, outOfRange, type Problem } from './problem.ts'

const words = { field: 'suction line', value: 'warm', accepted: 'a temperature' }

test.each<[Problem, string]>([
  [
    { kind: 'out-of-range', field: 'outdoor air', value: 295.3722222222222, min: 173.15, max: 293.15, unit: 'K' },
    'outdoor air: 295.372222 K is outside 173.15 to 293.15 K',
  ],
  [{ kind: 'unreadable', ...words }, 'suction line: cannot read “warm”; expected a temperature'],
  [{ kind: 'ambiguous', ...words }, 'suction line: “warm” can be read in two ways; write a temperature'],
  [{ kind: 'unknown', ...words }, 'suction line: “warm” is not known; expected a temperature'],
  [{ kind: 'missing', ...words }, 'suction line: missing; expected a temperature'],
  [{ kind: 'unsolved', ...words }, 'suction line: no solution at warm; a temperature'],
])('[property] $kind names field, value and what would do', (problem, sentence) => {
  expect(describeProblem(problem)).toBe(sentence)
})

test('[limit] the ends of a range belong to it; NaN and infinities do not', () => {
  for (const value of [0, 1, 0.5]) expect(outOfRange('x', value, 0, 1, 'm')).toBeUndefined()
  for (const value of [-1e-9, 1 + 1e-9, Number.NaN, Infinity, -Infinity]) {
    expect(outOfRange('x', value, 0, 1, 'm')).toEqual({
      kind: 'out-of-range',
      field: 'x',
      value,
      min: 0,
      max: 1,
      unit: 'm',
    })
  }
})
