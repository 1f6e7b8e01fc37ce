import { applianceUse } from '@chargewright/ledger'
import {
  leakRateChecks,
  type RecordOptions,
  recordCsv,
  recordJson,
  renderPdf,
  serviceRecord,
} from '@chargewright/report'
import type { AssessAnswer } from './assess.ts'

/** The service record of a visit in its three forms, each made only when it is asked for. */
export interface RecordFiles {
  readonly pdf: () => Promise<Uint8Array>
  readonly csv: () => string
  readonly json: () => object
}

/** @param given its checks follow those that the visit itself holds */
export function recordFiles(
  { visit, assessment, visits, learntFrom, about }: AssessAnswer,
  given: RecordOptions,
): RecordFiles {
  const byLaw = leakRateChecks(visit, visits, applianceUse(visit.system.facts.application))
  const options: RecordOptions = {
    ...given,
    learntFrom,
    checks: [...byLaw, ...(given.checks ?? [])],
    ...(about === undefined ? {} : { about }),
  }
  return {
    pdf: () => renderPdf(serviceRecord(visit, assessment, options)),
    csv: () => recordCsv(visit, assessment, options),
    json: () => JSON.parse(recordJson(visit, assessment, options)),
  }
}
