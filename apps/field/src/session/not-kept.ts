import { describeProblem } from '@chargewright/quantity'
import { describeStoreProblem } from '../store/store-problem.ts'
import type { NotKept } from './session.ts'

/** Why something was not kept, in words; problems speak of the field by its label on the screen. */
export function notKeptInWords(reason: NotKept, label?: string): string {
  switch (reason.kind) {
    case 'store':
      return `Not kept. ${describeStoreProblem(reason.problem)}`
    case 'problems':
      return reason.problems
        .map((problem) => describeProblem(label === undefined ? problem : { ...problem, field: label }))
        .join('\n')
  }
}
