import { readFile } from 'node:fs/promises'
import { fail, ok, type Result } from '@chargewright/quantity'
import { atFault, codeOf, type Failure, missing, unreadable, wrongUsage } from './failure.ts'
import type { Terminal } from './terminal.ts'

/**
 * The text of the file at a path, or of stdin for `-`.
 *
 * @param what the file is, for the problem
 */
export async function readText(
  path: string | undefined,
  what: string,
  { input }: Terminal,
): Promise<Result<string, Failure>> {
  if (path === undefined) return fail(wrongUsage([missing(what, 'its path, or - for stdin')]))
  const refused = (accepted: string) => fail(atFault([unreadable(what, path, accepted)]))
  let bytes: Uint8Array
  try {
    bytes = path === '-' ? await allOf(input) : await readFile(path)
  } catch (error) {
    return refused(`a file that can be read${WHY[codeOf(error)] ?? ''}`)
  }
  try {
    return ok(new TextDecoder('utf-8', { fatal: true }).decode(bytes))
  } catch {
    return refused('text in UTF-8')
  }
}

/** What the platform's codes mean to a person. */
const WHY: Readonly<Record<string, string>> = {
  ENOENT: '; there is none of this name',
  EISDIR: '; this is a folder',
  EACCES: '; this one may not be read',
  EPERM: '; this one may not be read',
}

async function allOf(input: AsyncIterable<Uint8Array>): Promise<Uint8Array> {
  const chunks: Uint8Array[] = []
  for await (const chunk of input) chunks.push(chunk)
  return Buffer.concat(chunks)
}
