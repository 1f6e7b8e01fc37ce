import { render, type UnitPreference } from '@chargewright/quantity'
import { PRESSURE_TEST_CAUTIONS, type PressureTestFinding, type StandingTest } from '@chargewright/tightness'
import { evidenceJson } from '../evidence-json.ts'
import { cautionJson, inSi } from '../quantity-json.ts'

/** The last reading against the first, and each reading before it. */
export function pressureTestJson({ findings, last }: StandingTest, units: UnitPreference): object {
  const short = ({ kind, change, detectable, sentence }: PressureTestFinding) => ({
    kind,
    sentence: render(sentence, units),
    ...inSi('change', change),
    ...inSi('detectable', detectable),
  })
  return {
    ...short(last),
    reasons: last.reasons.map((each) => evidenceJson(each, units)),
    steps: last.steps.map((step) => render(step, units)),
    readings: findings.map(({ after, finding }) => ({ ...inSi('after', after), ...short(finding) })),
    cautions: PRESSURE_TEST_CAUTIONS.map((each) => cautionJson(each, units)),
  }
}
