import { fail, ok, type Problem, type Result } from '@chargewright/quantity'
import * as v from 'valibot'
import { EventSchema } from './event.ts'
import { parsedJson } from './parsed-json.ts'
import { schemaProblem } from './schema-problem.ts'
import { Identifier, Prose } from './text.ts'

/** A visit as it is kept and exchanged: the events, as they were entered, and nothing derived. */
export const VisitFileSchema = v.strictObject({
  format: v.literal('chargewright-visit'),
  version: v.literal(1),
  id: Identifier,
  about: v.exactOptional(
    v.pipe(Prose, v.description('On the file itself, for instance that its figures are invented')),
  ),
  events: v.pipe(v.array(EventSchema), v.maxLength(10_000)),
})

export type VisitFile = v.InferOutput<typeof VisitFileSchema>

/**
 * Reads a visit file from its JSON text.
 *
 * @returns the file as it stands; else every problem with the path of its field (of several unknown fields of one
 * object only the first), so that a file can be mended in one go
 */
export function readVisitFile(json: string): Result<VisitFile, readonly Problem[]> {
  const data = parsedJson(json, 'visit file')
  return data.ok ? checkVisitFile(data.value) : fail([data.error])
}

/** The same for data that is already an object. */
export function checkVisitFile(data: unknown): Result<VisitFile, readonly Problem[]> {
  const checked = v.safeParse(VisitFileSchema, data)
  return checked.success ? ok(checked.output) : fail(checked.issues.map(schemaProblem))
}
