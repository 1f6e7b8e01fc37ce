import { render, type UnitPreference } from '@chargewright/quantity'
import { EVACUATION_CAUTIONS, type EvacuationFinding, type RiseFit, vacuumUnits } from '@chargewright/tightness'
import { evidenceJson } from '../evidence-json.ts'
import { cautionJson, optional } from '../quantity-json.ts'

/** An evacuation as JSON, with the fit of its rise. */
export function evacuationJson(finding: EvacuationFinding, preference: UnitPreference): object {
  const units = vacuumUnits(preference)
  const { kind, cause, sentence, reasons, steps, fit } = finding
  return {
    kind,
    cause,
    sentence: render(sentence, units),
    reasons: reasons.map((each) => evidenceJson(each, units)),
    steps: steps.map((step) => render(step, units)),
    ...optional('fit', fit && fitJson(fit)),
    cautions: EVACUATION_CAUTIONS.map((each) => cautionJson(each, units)),
  }
}

function fitJson({ best, leak, detectable_Pa_s, scatter_Pa }: RiseFit): object {
  const { kind, ...model } = best
  return {
    model: kind,
    ...model,
    leak_Pa_s: leak.best,
    leak_low_Pa_s: leak.low,
    leak_high_Pa_s: leak.high,
    detectable_Pa_s,
    scatter_Pa,
  }
}
