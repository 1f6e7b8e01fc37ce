import type { BenchAnswer, BenchRequest, BenchSession } from '@chargewright/cycle'
import type { Problem, UnitPreference } from '@chargewright/quantity'
import { fail, ok, type Result } from '@chargewright/quantity'
import type { BatchVerb } from '../batch/answer-line.ts'
import { linesOf } from '../batch/lines.ts'
import { runBatch } from '../batch/run-batch.ts'
import type { Terminal } from '../terminal.ts'
import { problemText } from '../text/problem-text.ts'
import { answerJson, startJson } from './bench-json.ts'
import { answerText, startText } from './bench-text.ts'
import { parseRequest } from './parse-request.ts'
import { readRequest } from './read-request.ts'

const LONGEST_TYPED_BYTES = 1000

/** A run at the prompt: a line in, a few lines out, until the debrief or the end of the input. */
export async function runPrompt(
  { start, answer }: BenchSession,
  units: UnitPreference,
  terminal: Terminal,
): Promise<void> {
  const { columns } = terminal
  const ask = (line: string): Result<BenchAnswer, Problem> => {
    const request = parseRequest(line)
    return request.ok ? answer(request.value) : request
  }
  await terminal.write(`${startText(start, units, columns)}> `)
  for await (const lines of linesOf(terminal.input, LONGEST_TYPED_BYTES)) {
    for (const line of lines) {
      const text = 'text' in line ? line.text : '?'
      if (text.trim() !== '') {
        const answered = ask(text)
        if (answered.ok) await terminal.write(answerText(answered.value, start, units, columns))
        else terminal.complain(`${problemText(answered.error)}\n`)
        if (answered.ok && answered.value.kind === 'debrief') return
      }
      await terminal.write('> ')
    }
  }
  await terminal.write('\nEnded without a debrief.\n')
}

/** A run by a script: a JSON object a line in, one out, after one that tells what there is to work on. */
export async function runScript(
  { start, answer }: BenchSession,
  units: UnitPreference,
  terminal: Terminal,
): Promise<void> {
  const verb: BatchVerb = (input) => {
    const request: Result<BenchRequest, readonly Problem[]> = readRequest(input, 'line')
    if (!request.ok) return request
    const answered = answer(request.value)
    return answered.ok ? ok(answerJson(answered.value, start, units)) : fail([answered.error])
  }
  await terminal.write(`${JSON.stringify(startJson(start))}\n`)
  await runBatch(verb, terminal)
}
