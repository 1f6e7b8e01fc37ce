import type { Problem, Result } from '@chargewright/quantity'
import fc from 'fast-check'
import { expect } from 'vitest'
import type { Forms } from '../src/verbs/declaring.ts'
import { defectsOfAnswer } from './defects.ts'

/** Every input ends in an answer that can be printed or in a problem that says what is wrong; the same inputs in every run. */
export function answersOrRefuses<Input, Answer>(
  inputs: fc.Arbitrary<Input>,
  ask: (input: Input) => Result<Answer, readonly Problem[]>,
  forms: Forms<Answer>,
  numRuns: number,
): void {
  let answered = 0
  fc.assert(
    fc.property(inputs, (input) => {
      const answer = ask(input)
      if (answer.ok) answered += 1
      expect(defectsOfAnswer(answer, forms, input)).toEqual([])
    }),
    { seed: 61, numRuns },
  )
  // A generator whose inputs are all refused would prove nothing of the answers.
  expect(answered).toBeGreaterThan(numRuns / 50)
}
