import { type Problem, problemStatement, type Statement, say, verbatim } from '@chargewright/quantity'
import type { EntryProblem } from '@chargewright/visit'
import { UNKNOWN_CYLINDER } from './balance-book.ts'

/**
 * What the cylinders of a visit leave out, one sentence for each reason, however many moves it is true of.
 *
 * @param balance problems of the balance
 * @param moves problems of the moves themselves
 */
export function notCounted(balance: readonly Problem[], moves: readonly EntryProblem[]): readonly Statement[] {
  const unnamed = (what: string) => moves.filter(({ problem }) => problem.field.startsWith(what)).length
  const [ofCylinder, ofRefrigerant] = [unnamed('cylinder'), unnamed('refrigerant')]
  const strange = balance.filter((problem) => problem.kind === 'unknown' && problem.accepted === UNKNOWN_CYLINDER)
  const names = [...new Set(strange.map(({ value }) => String(value)))]
  return [
    ...(ofCylinder > 0
      ? [say`Not counted: ${movesInWords(ofCylinder)} with no cylinder named. Correct that in the log`]
      : []),
    ...(ofRefrigerant > 0
      ? [say`Not counted: ${movesInWords(ofRefrigerant)} of a refrigerant that nobody named. Name it at the system`]
      : []),
    ...names.map(
      (name) => say`Not counted: what moved from or into cylinder ${verbatim(name)}, which was not weighed in here`,
    ),
    ...balance
      .filter((problem) => !strange.includes(problem))
      .map((problem) => say`Not counted. ${problemStatement(problem)}`),
  ]
}

const movesInWords = (count: number): Statement => (count === 1 ? say`1 move` : say`${count} moves`)
