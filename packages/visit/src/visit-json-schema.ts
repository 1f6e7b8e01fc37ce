import { toJsonSchema } from '@valibot/to-json-schema'
import { EventSchema, FactSchema, InstrumentSchema } from './event.ts'
import { MakersChartSchema, SystemStatementSchema } from './system.ts'
import { VisitFileSchema } from './visit-file.ts'

/**
 * The visit file as a JSON Schema (draft 2020-12), for programs that do not use this package. An entry of its own, so
 * that no app carries the converter: it runs when `schemas/visit.schema.json` is written, and in the test of that file.
 */
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
