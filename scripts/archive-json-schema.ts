import {
  ArchiveFileSchema,
  EventSchema,
  FactSchema,
  InstrumentSchema,
  MakersChartSchema,
  SystemStatementSchema,
} from '@chargewright/visit'
import { toJsonSchema } from '@valibot/to-json-schema'

/** The archive file as a JSON Schema (draft 2020-12), made from the code's own, for programs that do not use it. */
export function archiveJsonSchema(): object {
  const { $schema, ...schema } = toJsonSchema(ArchiveFileSchema, {
    target: 'draft-2020-12',
    definitions: {
      event: EventSchema,
      fact: FactSchema,
      systemStatement: SystemStatementSchema,
      makersChart: MakersChartSchema,
      instrument: InstrumentSchema,
    },
    // JSON has no word for infinity; only an overflowing literal could mean it.
    ignoreActions: ['finite'],
  })
  return {
    $schema,
    $id: 'urn:chargewright:archive:1',
    title: 'Archive',
    description:
      'Everything that a device keeps: systems and the visits to them as lists of events, photos, and how the device ' +
      'shows things. Taken in elsewhere it is merged by id, and changes nothing that is there.',
    ...schema,
  }
}
