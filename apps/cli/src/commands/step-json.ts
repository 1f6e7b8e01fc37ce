import type { Dose } from '@chargewright/charging'
import { inEnglish, teller, type UnitPreference, type Words } from '@chargewright/quantity'
import { evidenceJson } from '../evidence-json.ts'
import { inSi, optional } from '../quantity-json.ts'

/** A weighed step as JSON; with the interval in which the whole way to the target lies, where a twin sized it. */
export function stepJson(
  { direction, mass, interval, withoutTwin, phase, port, compressor, until, evidence }: Dose,
  units: UnitPreference,
  words: Words = inEnglish,
): object {
  return {
    direction,
    ...inSi('mass', mass),
    ...(interval ? { ...inSi('interval_low', interval.low), ...inSi('interval_high', interval.high) } : {}),
    ...optional('without_twin', withoutTwin && teller(units, words)(withoutTwin)),
    phase,
    port,
    compressor,
    ...optional('until', until),
    evidence: evidenceJson(evidence, units, words),
  }
}
