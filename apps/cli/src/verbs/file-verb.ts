import { fail, type Problem, type Result } from '@chargewright/quantity'
import { atFault, type ExitCode } from '../failure.ts'
import { readText } from '../read-text.ts'
import type { Terminal } from '../terminal.ts'
import { type FormFlags, type Forms, printIn } from './declaring.ts'

/** A verb that asks one file, which says everything. */
export interface FileVerb<Answer> extends Forms<Answer> {
  /** What the file is, for a problem. */
  readonly file: string
  readonly ask: (text: string) => Result<Answer, readonly Problem[]>
}

/** Answers the file at a path, or the one on stdin for `-`. */
export async function answerFile<Answer>(
  verb: FileVerb<Answer>,
  path: string | undefined,
  flags: FormFlags,
  terminal: Terminal,
): Promise<ExitCode> {
  const text = await readText(path, verb.file, terminal)
  if (!text.ok) return printIn(flags, text, verb, terminal)
  const answer = verb.ask(text.value)
  return printIn(flags, answer.ok ? answer : fail(atFault(answer.error)), verb, terminal)
}
