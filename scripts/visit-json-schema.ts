import {
  EventSchema,
  FactSchema,
  InstrumentSchema,
  MakersChartSchema,
  SystemStatementSchema,
  VisitFileSchema,
} from '@chargewright/visit'
import { toJsonSchema } from '@valibot/to-json-schema'

/** The visit file as a JSON Schema (draft 2020-12), made from the code's own, for programs that do not use it. */
export function visitJsonSchema(): object {
  const { $schema, ...schema } = toJsonSchema(VisitFileSchema, {
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
    $id: 'urn:chargewright:visit:1',
    title: 'Visit',
    description:
      'One call at a refrigerating system as a list of events, kept as they were typed. Their order is the order in ' +
      'which they happened. Events are only ever appended: a correction names the earlier event and never erases it.',
    ...schema,
  }
}
