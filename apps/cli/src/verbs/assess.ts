import { readFile } from 'node:fs/promises'
import { fail, ok, type Result, type UnitPreference } from '@chargewright/quantity'
import { type AssessAnswer, assess } from '../commands/assess.ts'
import { assessJson } from '../commands/assess-json.ts'
import { assessText } from '../commands/assess-text.ts'
import { atFault, type ExitCode, type Failure, missing, unreadable, wrongUsage } from '../failure.ts'
import { print } from '../print.ts'
import type { Terminal } from '../terminal.ts'

/** Assesses the visit file at a path, or the one on stdin for `-`, and prints what was found. */
export async function answerAssess(
  path: string | undefined,
  flags: { readonly units: UnitPreference; readonly json?: boolean },
  terminal: Terminal,
): Promise<ExitCode> {
  const answer = await readAndAssess(path, terminal)
  return flags.json
    ? print(answer, { kind: 'json', write: (a) => assessJson(a, flags.units) }, terminal)
    : print(answer, { kind: 'text', write: (a) => assessText(a, flags.units, terminal.columns) }, terminal)
}

async function readAndAssess(path: string | undefined, terminal: Terminal): Promise<Result<AssessAnswer, Failure>> {
  if (path === undefined) return fail(wrongUsage([missing('visit file', 'its path, or - for stdin')]))
  const text = await readText(path, terminal)
  if (!text.ok) return text
  const answer = assess(text.value)
  return answer.ok ? answer : fail(atFault(answer.error))
}

async function readText(path: string, { input }: Terminal): Promise<Result<string, Failure>> {
  const refused = (accepted: string) => fail(atFault([unreadable('visit file', path, accepted)]))
  let bytes: Uint8Array
  try {
    bytes = path === '-' ? await allOf(input) : await readFile(path)
  } catch (error) {
    return refused(`a file that can be read (${error instanceof Error ? error.message : error})`)
  }
  try {
    return ok(new TextDecoder('utf-8', { fatal: true }).decode(bytes))
  } catch {
    return refused('text in UTF-8')
  }
}

async function allOf(input: AsyncIterable<Uint8Array>): Promise<Uint8Array> {
  const chunks: Uint8Array[] = []
  for await (const chunk of input) chunks.push(chunk)
  return Buffer.concat(chunks)
}
