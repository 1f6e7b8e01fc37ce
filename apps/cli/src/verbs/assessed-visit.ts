import { fail, type Result } from '@chargewright/quantity'
import { type AssessAnswer, assess } from '../commands/assess.ts'
import { atFault, type Failure } from '../failure.ts'
import { readText } from '../read-text.ts'
import type { Terminal } from '../terminal.ts'

/**
 * The visit file at a path, or the one on stdin for `-`, with its answer.
 *
 * @param earlier paths of visit files of the same system, the first visit first
 */
export async function assessedVisit(
  path: string | undefined,
  earlier: readonly string[],
  terminal: Terminal,
): Promise<Result<AssessAnswer, Failure>> {
  const visit = await readText(path, 'visit file', terminal)
  if (!visit.ok) return visit
  const before: string[] = []
  for (const each of earlier) {
    const text = await readText(each, 'earlier visit file', terminal)
    if (!text.ok) return text
    before.push(text.value)
  }
  const answer = assess(visit.value, before)
  return answer.ok ? answer : fail(atFault(answer.error))
}
