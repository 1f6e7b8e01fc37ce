import type { MakersWord } from '@chargewright/diagnosis'
import type { Visit } from '@chargewright/visit'
import type { Measures } from '../measures/measures.ts'
import { superheatTarget } from '../target/superheat-target.ts'

/** The superheat that the maker's own chart asks for; nothing where it was not entered or gives no value. */
export function makersWord(visit: Visit, measures: Measures): MakersWord {
  if (!visit.system.facts.makersChart) return {}
  const target = superheatTarget(visit, measures)
  if (!target.ok || target.value.kind !== 'target') return {}
  return { superheat: { mean: target.value.measure.quantity.si, sd: UNIT_TO_UNIT_K } }
}

/**
 * Standard deviation of sound units of one model about its chart, K: what is left of 3.0 to 3.9 K between readings and
 * charts of simulated units when their instruments and their charge, right within 4 %, are taken off
 * (`bench/scoreboard/spread-of-sound.ts`; the parts taken off are own estimates).
 */
export const UNIT_TO_UNIT_K = 2.4
