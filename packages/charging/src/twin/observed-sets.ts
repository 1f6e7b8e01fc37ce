import { conditions, type Observable, type Observation } from '@chargewright/cycle'
import type { Quantity } from '@chargewright/quantity'
import type { Visit } from '@chargewright/visit'
import { type Measures, measure } from '../measures/measures.ts'
import { sitePressure } from '../measures/site-pressure.ts'
import type { Case } from '../ruling.ts'
import { type VisitSet, visitSets } from '../visit-sets.ts'

/** The sets of readings of a visit that a twin can learn from. */
export function observedSets(asked: Pick<Case, 'visit' | 'refrigerant'>): readonly Observation[] {
  return visitSets(asked.visit).flatMap((set) => observationOf(asked, set))
}

function observationOf(asked: Pick<Case, 'visit' | 'refrigerant'>, set: VisitSet): readonly Observation[] {
  const visit: Visit = { ...asked.visit, readings: set.readings }
  const { measures } = measure(visit, asked.refrigerant)
  const outdoor = visit.readings['condenser-entering-air']
  const dryBulb = visit.readings['return-air-dry-bulb']
  if (!outdoor || !dryBulb || !measures.returnWetBulb || !measures.superheat) return []
  const site = sitePressure(visit, [])
  const at = conditions(outdoor.quantity.si, dryBulb.quantity.si, measures.returnWetBulb.quantity.si, site.quantity.si)
  return at.ok ? [{ conditions: at.value, added_kg: set.added_kg, readings: teaching(visit, measures) }] : []
}

function teaching({ readings }: Visit, measures: Measures): Observation['readings'] {
  const found: Readonly<Record<Exclude<Observable, 'power_W'>, Quantity | undefined>> = {
    superheat_K: measures.superheat?.quantity,
    subcooling_K: measures.subcooling?.quantity,
    evaporating_K: measures.evaporatingTemperature?.quantity,
    condensing_K: measures.condensingTemperature?.quantity,
    dischargeTemperature_K: readings['discharge-temperature']?.quantity,
    supplyAir_K: readings['supply-air-dry-bulb']?.quantity,
  }
  const known = Object.entries(found).flatMap(([name, q]) => (q?.u ? [[name, { value: q.si, sd: q.u }]] : []))
  return Object.fromEntries(known)
}
