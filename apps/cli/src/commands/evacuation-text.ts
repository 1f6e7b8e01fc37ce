import type { UnitPreference } from '@chargewright/quantity'
import { EVACUATION_CAUTIONS, type EvacuationFinding, HOLD_WORDS, vacuumUnits } from '@chargewright/tightness'
import { findingPage } from '../text/finding-page.ts'

/** An evacuation as a page: whether it held, why it rose, and what to do. */
export function evacuationText(finding: EvacuationFinding, units: UnitPreference, width: number): string {
  return findingPage(
    { ...finding, title: [HOLD_WORDS[finding.kind], 'evacuation'], cautions: EVACUATION_CAUTIONS },
    vacuumUnits(units),
    width,
  )
}
