import {
  ArchiveFileSchema,
  EventSchema,
  FactSchema,
  InstrumentSchema,
  MakersChartSchema,
  SystemStatementSchema,
  VisitFileSchema,
} from '@chargewright/visit'
import { toJsonSchema } from '@valibot/to-json-schema'

/** Our file formats as JSON Schemas (draft 2020-12), made from the code's own, for programs that do not use it. */
export const JSON_SCHEMAS = {
  visit: published(VisitFileSchema, {
    $id: 'urn:chargewright:visit:1',
    title: 'Visit',
    description:
      'One call at a refrigerating system as a list of events, kept as they were typed. Their order is the order in ' +
      'which they happened. Events are only ever appended: a correction names the earlier event and never erases it.',
  }),
  archive: published(ArchiveFileSchema, {
    $id: 'urn:chargewright:archive:1',
    title: 'Archive',
    description:
      'Everything that a device keeps: systems and the visits to them as lists of events, photos, and how the device ' +
      'shows things. Taken in elsewhere it is merged by id, and changes nothing that is there.',
  }),
} as const

interface About {
  readonly $id: string
  readonly title: string
  readonly description: string
}

function published(format: Parameters<typeof toJsonSchema>[0], about: About): object {
  const { $schema, ...schema } = toJsonSchema(format, {
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
  return { $schema, ...about, ...schema }
}
