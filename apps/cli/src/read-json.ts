import { fail, type Result } from '@chargewright/quantity'
import { atFault, type Failure } from './failure.ts'
import { parseJson } from './json-reader.ts'
import { readText } from './read-text.ts'
import type { Terminal } from './terminal.ts'

/** The JSON value in the file at a path, or on stdin for `-`. */
export async function readJson(
  path: string | undefined,
  what: string,
  terminal: Terminal,
): Promise<Result<unknown, Failure>> {
  const text = await readText(path, what, terminal)
  if (!text.ok) return text
  const data = parseJson(text.value, what)
  return data.ok ? data : fail(atFault(data.error))
}
