import { type RecordOptions, recordCsv, recordJson, renderPdf, serviceRecord } from '@chargewright/report'
import type { AssessAnswer } from './assess.ts'

/** The service record of a visit in its three forms, each made only when it is asked for. */
export interface RecordFiles {
  readonly pdf: () => Promise<Uint8Array>
  readonly csv: () => string
  readonly json: () => object
}

export function recordFiles({ visit, assessment, about }: AssessAnswer, given: RecordOptions): RecordFiles {
  const options = about === undefined ? given : { ...given, about }
  return {
    pdf: () => renderPdf(serviceRecord(visit, assessment, options)),
    csv: () => recordCsv(visit, assessment, options),
    json: () => JSON.parse(recordJson(visit, assessment, options)),
  }
}
