import type { Assessment } from '@chargewright/charging'
import { problemStatement, say, type Tell } from '@chargewright/quantity'
import type { LogEntry, Visit } from '@chargewright/visit'
import { factInWords } from './fact-in-words.ts'

/** An entry that was corrected or withdrawn: what stood first, what stands now, and why. */
export interface CorrectionRow {
  readonly at: string
  readonly entered: string
  readonly holds: string
  readonly reasons: readonly string[]
}

/** What was entered beside readings and weights. */
export interface HappeningRow {
  readonly at: string
  readonly words: string
}

export const correctionRows = ({ log }: Visit, tell: Tell): readonly CorrectionRow[] =>
  log
    .filter(({ corrections, holds }) => corrections.length > 0 || holds === undefined)
    .map(({ entered, holds, corrections, at }) => ({
      at: corrections.at(-1)?.at ?? at,
      entered: factInWords(entered, tell),
      holds: holds
        ? factInWords(holds, tell)
        : tell(corrections.length > 0 ? say`withdrawn` : say`not used: its id was used before`),
      reasons: corrections.flatMap(({ reason }) => reason ?? []),
    }))

/** Observations, waits, adjustments, photos and notes that stand, in the order in which they happened. */
export const happeningRows = ({ log }: Visit, tell: Tell): readonly HappeningRow[] =>
  log.flatMap(({ at, holds }: LogEntry) => {
    if (!holds || holds.kind === 'reading' || holds.kind === 'refrigerant-moved' || holds.kind === 'system-described')
      return []
    return [{ at, words: factInWords(holds, tell) }]
  })

/** What could not be read or derived, each once. */
export const problemLines = ({ problems }: Assessment, tell: Tell): readonly string[] => [
  ...new Set(problems.map(({ problem }) => tell(problemStatement(problem)))),
]

/** What was used although it lies outside what is plausible. */
export const doubtLines = ({ doubts }: Assessment, tell: Tell): readonly string[] => [
  ...new Set(doubts.map(({ problem }) => tell(problemStatement(problem)))),
]
