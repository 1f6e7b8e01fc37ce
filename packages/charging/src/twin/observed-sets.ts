import { conditions, type Observable, type Observation } from '@chargewright/cycle'
import type { Quantity } from '@chargewright/quantity'
import type { Move, Reading, ReadingId, Visit } from '@chargewright/visit'
import { type Measures, measure } from '../measures/measures.ts'
import { sitePressure } from '../measures/site-pressure.ts'
import type { Case } from '../ruling.ts'

/**
 * The sets of readings that a twin can learn from: one before the first weighed step, one after each. What is read of
 * the circuit counts for its own set alone; what is read of the weather and the room holds until it is read again.
 */
export function observedSets(asked: Pick<Case, 'visit' | 'refrigerant'>): readonly Observation[] {
  const { visit } = asked
  return [undefined, ...visit.moves].flatMap((move, i) => {
    const from = move?.position ?? -1
    const to = visit.moves[i]?.position ?? Number.POSITIVE_INFINITY
    const own = visit.history.filter(({ position }) => position > from && position < to)
    const standing = visit.history.filter(({ position, what }) => position < to && OF_THE_SITE.includes(what))
    return observationOf(asked, [...standing, ...own], added(visit.moves.slice(0, i)))
  })
}

const OF_THE_SITE: readonly ReadingId[] = [
  'return-air-dry-bulb',
  'return-air-wet-bulb',
  'return-air-humidity',
  'condenser-entering-air',
]

function observationOf(
  asked: Pick<Case, 'visit' | 'refrigerant'>,
  set: readonly Reading[],
  added_kg: number,
): readonly Observation[] {
  const readings = Object.fromEntries(set.map((reading) => [reading.what, reading]))
  const visit: Visit = { ...asked.visit, readings }
  const { measures } = measure(visit, asked.refrigerant)
  const outdoor = visit.readings['condenser-entering-air']
  const dryBulb = visit.readings['return-air-dry-bulb']
  if (!outdoor || !dryBulb || !measures.returnWetBulb || !measures.superheat) return []
  const site = sitePressure(visit, [])
  const at = conditions(outdoor.quantity.si, dryBulb.quantity.si, measures.returnWetBulb.quantity.si, site.quantity.si)
  return at.ok ? [{ conditions: at.value, added_kg, readings: teaching(visit, measures) }] : []
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

function added(moves: readonly Move[]): number {
  return moves.reduce((sum, { fact, mass }) => sum + (fact.direction === 'into-system' ? mass.si : -mass.si), 0)
}
