import { fail, type Problem, type Result } from '@chargewright/quantity'
import { internalError } from '../failure.ts'
import { problemJson } from '../problem-json.ts'
import { shorten } from '../shorten.ts'
import type { Line } from './lines.ts'

/** A verb as a batch sees it: any JSON value in, an object or the problems with it out. */
export type BatchVerb = (input: unknown) => Result<object, readonly Problem[]>

/** What one line is answered with, as one line of JSON; `undefined` for a blank line, which asks nothing. */
export function answerLine(line: Line, verb: BatchVerb): { readonly json: string; readonly ok: boolean } | undefined {
  if ('unreadable' in line) return refusal(line.number, [{ kind: 'unreadable', field: 'line', ...line.unreadable }])
  if (line.text.trim() === '') return undefined
  const answer = tryVerb(line.text, verb)
  return answer.ok ? { json: JSON.stringify(answer.value), ok: true } : refusal(line.number, answer.error)
}

function tryVerb(text: string, verb: BatchVerb): Result<object, readonly Problem[]> {
  const input = parseJson(text)
  if (!input.ok) return input
  try {
    return verb(input.value)
  } catch (error) {
    // A fault of the program in one line must not cost the answers to all the others.
    return fail(internalError(error).problems)
  }
}

function parseJson(text: string): Result<unknown, readonly Problem[]> {
  try {
    return { ok: true, value: JSON.parse(text) }
  } catch (error) {
    const reason = error instanceof Error ? error.message : 'not JSON'
    return fail([
      { kind: 'unreadable', field: 'line', value: shorten(text), accepted: `one JSON object (${shorten(reason)})` },
    ])
  }
}

function refusal(line: number, problems: readonly Problem[]) {
  const [error, ...others] = problems.map(problemJson)
  const json = JSON.stringify(others.length === 0 ? { error, line } : { error, others, line })
  return { json, ok: false }
}
