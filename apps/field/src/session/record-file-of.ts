import type { Assessment } from '@chargewright/charging'
import type { UnitPreference } from '@chargewright/quantity'
import type { Visit } from '@chargewright/visit'
import type { StoredVisit } from '../store/visit-store.ts'
import { fileName, type SavedFile } from './saved-file.ts'

export interface Assessed {
  readonly stored: StoredVisit
  readonly visit: Visit
  readonly assessment: Assessment
  readonly units: UnitPreference
}

/** The service record as PDF, to be signed. What writes it is large and is loaded when a record is asked for. */
export async function recordFileOf(assessed: Assessed, created: string): Promise<SavedFile> {
  const { renderPdf, serviceRecord } = await import('@chargewright/report')
  const { stored, visit, assessment, units } = assessed
  const about = stored.about !== undefined && { about: stored.about }
  const content = await renderPdf(serviceRecord(visit, assessment, { preference: units, created, ...about }))
  const name = fileName(visit.system.facts.name, 'record.pdf')
  return { name, type: 'application/pdf', content: new Uint8Array(content) }
}
