import type { UnitPreference } from '@chargewright/quantity'
import { EVACUATION_CAUTIONS, type EvacuationFinding, vacuumUnits } from '@chargewright/tightness'
import { findingPage } from '../text/finding-page.ts'

/** What a finding is called. */
export const EVACUATION_WORDS: Readonly<Record<EvacuationFinding['kind'], string>> = {
  pass: 'held',
  'not-held': 'not held',
  'keep-watching': 'keep watching',
  'not-deep-enough': 'not deep enough',
  'too-cold': 'too cold to tell',
  falling: 'pressure falls',
}

/** An evacuation as a page: whether it held, why it rose, and what to do. */
export function evacuationText(finding: EvacuationFinding, units: UnitPreference, width: number): string {
  return findingPage(
    { ...finding, title: [EVACUATION_WORDS[finding.kind], 'evacuation'], cautions: EVACUATION_CAUTIONS },
    vacuumUnits(units),
    width,
  )
}
