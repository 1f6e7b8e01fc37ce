import { fail, ok, type Problem, type Result } from '@chargewright/quantity'
import * as v from 'valibot'
import { EventSchema } from './event.ts'

/** A visit as it is kept and exchanged: the events, as they were entered, and nothing derived. */
export const VisitFileSchema = v.strictObject({
  format: v.literal('chargewright-visit'),
  version: v.literal(1),
  id: v.pipe(v.string(), v.nonEmpty(), v.maxLength(100)),
  /** Free words about the file, for instance that its figures are invented. */
  about: v.exactOptional(v.string()),
  events: v.pipe(v.array(EventSchema), v.maxLength(10_000)),
})

export type VisitFile = v.InferOutput<typeof VisitFileSchema>

/**
 * Reads a visit file from its JSON text. All problems are told at once, each with the path of its field, so that a
 * file can be mended in one go.
 */
export function readVisitFile(json: string): Result<VisitFile, readonly Problem[]> {
  let data: unknown
  try {
    data = JSON.parse(json)
  } catch (error) {
    const reason = error instanceof Error ? error.message : 'not JSON'
    return fail([{ kind: 'unreadable', field: 'visit file', value: shorten(json), accepted: `JSON (${reason})` }])
  }
  return checkVisitFile(data)
}

/** The same for data that is already an object. */
export function checkVisitFile(data: unknown): Result<VisitFile, readonly Problem[]> {
  const checked = v.safeParse(VisitFileSchema, data)
  if (!checked.success) return fail(checked.issues.flatMap(problemsOf))
  return ok(checked.output)
}

function problemsOf(issue: v.BaseIssue<unknown>): readonly Problem[] {
  const path = v.getDotPath(issue) ?? 'visit file'
  const value = shorten(issue.input === undefined ? 'nothing' : (JSON.stringify(issue.input) ?? String(issue.input)))
  const kind = issue.input === undefined ? 'missing' : 'unreadable'
  return [{ kind, field: path, value, accepted: issue.expected ?? issue.message }]
}

function shorten(text: string): string {
  return text.length > 60 ? `${text.slice(0, 60)}…` : text
}
