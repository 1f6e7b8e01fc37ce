import { fail, ok, type Problem, type Result } from '@chargewright/quantity'
import * as v from 'valibot'
import { EventSchema } from './event.ts'
import { parsedJson } from './parsed-json.ts'
import { schemaProblem } from './schema-problem.ts'
import { Identifier, Prose, Typed } from './text.ts'

const LOG = {
  id: Identifier,
  origin: v.pipe(v.picklist(['started-here', 'imported', 'demo']), v.description('How it came to the device')),
  setAside: v.pipe(v.boolean(), v.description('Out of sight, with everything it holds')),
  events: v.pipe(v.array(EventSchema), v.maxLength(10_000)),
}

/** More than a device will hold, so that a file of nonsense ends early. */
const MOST_LOGS = 100_000

/** Everything that a device keeps, as one file: the logs of systems and visits, the photos, how the device shows things. */
export const ArchiveFileSchema = v.strictObject({
  format: v.literal('chargewright-archive'),
  version: v.literal(1),
  systems: v.pipe(v.array(v.strictObject(LOG)), v.maxLength(MOST_LOGS)),
  visits: v.pipe(
    v.array(
      v.strictObject({
        ...LOG,
        system: v.pipe(Identifier, v.description('Id of the system that it was made at; it is in the file')),
        about: v.exactOptional(Prose),
      }),
    ),
    v.maxLength(MOST_LOGS),
  ),
  photos: v.pipe(
    v.array(
      v.strictObject({
        file: v.pipe(Typed, v.description('Name by which an event of a log knows it')),
        type: v.literal('image/jpeg'),
        base64: v.pipe(v.string(), v.nonEmpty()),
      }),
    ),
    v.maxLength(MOST_LOGS),
  ),
  preferences: v.pipe(
    v.record(Typed, v.string()),
    v.description('Of the device and of no record: units, theme and the like, by name'),
  ),
})

export type ArchiveFile = v.InferOutput<typeof ArchiveFileSchema>

/**
 * Reads an archive file from its JSON text.
 *
 * @returns the file as it stands; else every problem with the path of its field. A visit that names a system which is
 * not in the file is a problem too.
 */
export function readArchiveFile(json: string): Result<ArchiveFile, readonly Problem[]> {
  const data = parsedJson(json, 'archive file')
  if (!data.ok) return fail([data.error])
  const checked = v.safeParse(ArchiveFileSchema, data.value)
  if (!checked.success) return fail(checked.issues.map(schemaProblem))
  const known = new Set(checked.output.systems.map(({ id }) => id))
  const strays = checked.output.visits.flatMap(({ system }, i): readonly Problem[] => {
    const field = `visits[${i}].system`
    return known.has(system)
      ? []
      : [{ kind: 'unknown', field, value: system, accepted: 'the id of a system in the file' }]
  })
  return strays.length > 0 ? fail(strays) : ok(checked.output)
}
