import { type Evidence, render, type Statement, type UnitPreference } from '@chargewright/quantity'
import type { Citations } from './citations.ts'
import { type EvidenceLine, evidenceLines } from './evidence-lines.ts'

/** A check that was made beside the readings of the visit, such as an evacuation, and what it found. */
export interface Check {
  readonly title: string
  /** In a few words. */
  readonly verdict: string
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

export function checkInWords(check: Check, preference: UnitPreference, words: Citations): CheckInWords {
  const { title, verdict, sentence, reasons, at, units = preference } = check
  return {
    title,
    verdict,
    sentence: render(sentence, units),
    reasons: evidenceLines(reasons, units, words),
    ...(at === undefined ? {} : { at }),
  }
}
