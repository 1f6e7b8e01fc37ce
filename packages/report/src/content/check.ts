import { type Evidence, type Statement, teller, type UnitPreference, type Words } from '@chargewright/quantity'
import type { Citations } from './citations.ts'
import { type EvidenceLine, evidenceLines } from './evidence-lines.ts'

/** A check that was made beside the readings of the visit, such as an evacuation, and what it found. */
export interface Check {
  readonly title: Statement
  /** In a few words. */
  readonly verdict: Statement
  readonly sentence: Statement
  readonly reasons: readonly Evidence[]
  /** ISO 8601. */
  readonly at?: string
  /** In place of the record's own units, where those would hide the figures: a vacuum in psia is nothing. */
  readonly units?: UnitPreference
}

/** A check as the record says it. */
export interface CheckInWords {
  readonly title: string
  readonly verdict: string
  readonly sentence: string
  readonly reasons: readonly EvidenceLine[]
  readonly at?: string
}

export function checkInWords(check: Check, preference: UnitPreference, words: Words, sources: Citations): CheckInWords {
  const { title, verdict, sentence, reasons, at, units = preference } = check
  const tell = teller(units, words)
  return {
    title: tell(title),
    verdict: tell(verdict),
    sentence: tell(sentence),
    reasons: evidenceLines(reasons, tell, sources),
    ...(at === undefined ? {} : { at }),
  }
}
