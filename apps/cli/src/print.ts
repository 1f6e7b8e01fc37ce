import type { Result } from '@chargewright/quantity'
import type { ExitCode, Failure } from './failure.ts'
import { problemJson } from './problem-json.ts'
import type { Terminal } from './terminal.ts'
import { problemText } from './text/problem-text.ts'

/** How an answer is written: as a page of text, or as JSON where that was asked for. */
export type Form<Answer> =
  | { readonly kind: 'text'; readonly write: (answer: Answer) => string }
  | { readonly kind: 'json'; readonly write: (answer: Answer) => object }

/**
 * Prints an answer, or the problems in its place: the one way out of every verb but a batch. As JSON the problems go to
 * stdout too, so that whoever reads it always reads one object; each is also a sentence on stderr.
 */
export async function print<Answer>(
  answer: Result<Answer, Failure>,
  form: Form<Answer>,
  terminal: Terminal,
): Promise<ExitCode> {
  if (answer.ok) {
    await terminal.write(form.kind === 'json' ? asJson(form.write(answer.value)) : form.write(answer.value))
    return 0
  }
  const { exitCode, problems } = answer.error
  if (form.kind === 'json') {
    const [error, ...others] = problems.map(problemJson)
    await terminal.write(asJson(others.length === 0 ? { error } : { error, others }))
  }
  for (const problem of problems) terminal.complain(`chargewright: ${problemText(problem)}\n`)
  return exitCode
}

const asJson = (value: object) => `${JSON.stringify(value, null, 2)}\n`
