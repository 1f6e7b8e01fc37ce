import { describeStoreProblem } from '../store/store-problem.ts'
import { problemInWords } from '../words/problem-in-words.ts'
import { t } from '../words/t.ts'
import type { NotKept } from './session.ts'

/** Why something was not kept, in words; problems speak of the field by its label on the screen. */
export function notKeptInWords(reason: NotKept, label?: string): string {
  switch (reason.kind) {
    case 'store':
      return t('Not kept. {0}', describeStoreProblem(reason.problem))
    case 'problems':
      return reason.problems
        .map((problem) => problemInWords(label === undefined ? problem : { ...problem, field: label }))
        .join('\n')
  }
}
