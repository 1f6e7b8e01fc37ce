import { writeFile } from 'node:fs/promises'
import { atFault, codeOf, type Failure, unreadable } from './failure.ts'

/** Writes a file that a flag asked for; an existing one of that name is replaced. */
export async function writeTo(field: string, path: string, content: string | Uint8Array): Promise<Failure | undefined> {
  try {
    await writeFile(path, content)
    return undefined
  } catch (error) {
    const reason = WHY[codeOf(error)] ?? (error instanceof Error ? error.message : String(error))
    return atFault([unreadable(field, path, `a file that can be written; ${reason}`)])
  }
}

/** What the platform's codes mean to a person. */
const WHY: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such folder',
  EISDIR: 'this is a folder',
  EACCES: 'it may not be written',
  EPERM: 'it may not be written',
  EROFS: 'nothing may be written there',
}
