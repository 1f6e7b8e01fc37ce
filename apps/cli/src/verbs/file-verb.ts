import { fail, ok, type Problem, type Result, type UnitPreference } from '@chargewright/quantity'
import type { BatchVerb } from '../batch/answer-line.ts'
import { atFault, type ExitCode } from '../failure.ts'
import { parseJson } from '../json-reader.ts'
import { readText } from '../read-text.ts'
import type { Terminal } from '../terminal.ts'
import { type FormFlags, type Forms, printIn } from './declaring.ts'

/** A verb that asks one JSON file, which says everything. */
export interface FileVerb<Answer> extends Forms<Answer> {
  /** What the file is, for a problem. */
  readonly file: string
  readonly ask: (data: unknown) => Result<Answer, readonly Problem[]>
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
  const data = parseJson(text.value, verb.file)
  const answer = data.ok ? verb.ask(data.value) : data
  return printIn(flags, answer.ok ? answer : fail(atFault(answer.error)), verb, terminal)
}

/** The same for a file a line; sentences in the units preferred. */
export const fileBatch =
  <Answer>({ ask, json }: FileVerb<Answer>, units: UnitPreference): BatchVerb =>
  (input) => {
    const answer = ask(input)
    return answer.ok ? ok(json(answer.value, units)) : answer
  }
