import { fail, type Result, type UnitPreference } from '@chargewright/quantity'
import { type AssessAnswer, assess } from '../commands/assess.ts'
import { assessJson } from '../commands/assess-json.ts'
import { assessText } from '../commands/assess-text.ts'
import { atFault, type ExitCode, type Failure } from '../failure.ts'
import { print } from '../print.ts'
import { readText } from '../read-text.ts'
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
  const text = await readText(path, 'visit file', terminal)
  if (!text.ok) return text
  const answer = assess(text.value)
  return answer.ok ? answer : fail(atFault(answer.error))
}
