import { FINDINGS } from '@chargewright/charging'
import { statedSd } from '@chargewright/cycle'
import { render, type UnitPreference } from '@chargewright/quantity'
import { measureKey } from '../json-key.ts'
import { optional } from '../quantity-json.ts'
import type { DoseAnswer } from './dose.ts'
import { learntParameters } from './learnt-parameters.ts'
import { stepJson } from './step-json.ts'

/** The step with its interval, and what was learnt; or the sentences that say why there is none. */
export function doseJson({ visit, assessment, learnt }: DoseAnswer, units: UnitPreference): object {
  const { finding } = assessment
  return {
    visit: visit.id,
    version: assessment.version,
    kind: finding.kind,
    word: FINDINGS[finding.kind],
    sentence: render(finding.sentence, units),
    steps: finding.steps.map((step) => render(step, units)),
    ...optional('dose', finding.dose && stepJson(finding.dose, units)),
    ...(learnt.ok
      ? {
          learnt: {
            charge_kg: learnt.value.learned.charge_kg,
            charge_standard_uncertainty_kg: statedSd(learnt.value.system, learnt.value.learned.chargeSd_kg),
            sets: learnt.value.sets.length,
            misfit: learnt.value.learned.misfit,
            factors: learntParameters(learnt.value.learned).map(({ name, meaning, factor, u }) => ({
              name: measureKey(name),
              meaning,
              factor_fraction: factor,
              factor_standard_uncertainty_fraction: u * factor,
            })),
          },
        }
      : { nothing_learnt: render(learnt.error, units) }),
  }
}
