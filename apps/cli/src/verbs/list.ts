import { fail, ok, type Result } from '@chargewright/quantity'
import { type ListedRefrigerant, list } from '../commands/list.ts'
import { listText } from '../commands/list-text.ts'
import { atFault, type ExitCode, type Failure } from '../failure.ts'
import { print } from '../print.ts'
import type { Terminal } from '../terminal.ts'

/** Prints the refrigerants named, or all of them. */
export async function answerList(
  names: readonly string[],
  flags: { readonly json?: boolean },
  terminal: Terminal,
): Promise<ExitCode> {
  const answer = listedAll(names)
  return flags.json
    ? print(answer, { kind: 'json', write: (rows) => rows }, terminal)
    : print(answer, { kind: 'text', write: (rows) => listText(rows, terminal.columns) }, terminal)
}

function listedAll(names: readonly string[]): Result<readonly ListedRefrigerant[], Failure> {
  const rows = list(names)
  const problems = rows.flatMap((row) => (row.ok ? [] : [row.error]))
  return problems.length > 0 ? fail(atFault(problems)) : ok(rows.flatMap((row) => (row.ok ? [row.value] : [])))
}
