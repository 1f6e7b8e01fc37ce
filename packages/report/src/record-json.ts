import type { Assessment } from '@chargewright/charging'
import type { Visit } from '@chargewright/visit'
import { type RecordOptions, recordContent } from './content/record-content.ts'

/** The record as data: every text as typed and whole, every quantity in the reader's units and in SI. */
export function recordJson(visit: Visit, assessment: Assessment, options: RecordOptions): string {
  const content = recordContent(visit, assessment, options)
  return `${JSON.stringify({ format: 'chargewright-record', version: 1, ...content }, null, 2)}\n`
}
