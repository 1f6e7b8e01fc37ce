import type { Terminal } from '../terminal.ts'
import { answerLine, type BatchVerb } from './answer-line.ts'
import { linesOf } from './lines.ts'

/**
 * Answers every line of the input with one line, in order. A bad line is answered with its problem and the run goes
 * on; how many there were is told on stderr.
 */
export async function runBatch(verb: BatchVerb, terminal: Terminal): Promise<void> {
  let asked = 0
  let refused = 0
  for await (const lines of linesOf(terminal.input)) {
    const answers = lines.map((line) => answerLine(line, verb)).filter((answer) => answer !== undefined)
    asked += answers.length
    refused += answers.filter((answer) => !answer.ok).length
    if (answers.length > 0) await terminal.write(`${answers.map((answer) => answer.json).join('\n')}\n`)
  }
  if (refused > 0) terminal.complain(`${refused} of ${asked} lines could not be answered; each has its "error"\n`)
}
