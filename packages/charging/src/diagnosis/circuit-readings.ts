import type { MakersWord, ReadingSet, WeighedSet } from '@chargewright/diagnosis'
import { type Quantity, toAbsolute } from '@chargewright/quantity'
import type { ReadingId, Visit } from '@chargewright/visit'
import { measure } from '../measures/measures.ts'
import { sitePressure } from '../measures/site-pressure.ts'
import type { Case } from '../ruling.ts'
import { visitSets } from '../visit-sets.ts'
import { makersWord } from './makers-word.ts'

/** A set in which causes can be weighed, and what the maker's chart asks for in its weather. */
export interface CircuitSet extends WeighedSet {
  readonly maker: MakersWord
}

/** The sets of readings of a visit in which causes can be weighed: those with the air at both coils, and a pressure. */
export function circuitReadings({ visit, refrigerant }: Pick<Case, 'visit' | 'refrigerant'>): readonly CircuitSet[] {
  return visitSets(visit).flatMap(({ readings, added_kg }) => {
    const now: Visit = { ...visit, readings }
    const { measures } = measure(now, refrigerant)
    const wetBulb = measures.returnWetBulb
    const set = wetBulb && readingSet(now, wetBulb.quantity.si)
    return set ? [{ readings: set, added_kg, maker: makersWord(now, measures) }] : []
  })
}

function readingSet(visit: Visit, returnWetBulb_K: number): ReadingSet | undefined {
  const si = (id: ReadingId) => visit.readings[id]?.quantity.si
  const site = sitePressure(visit, []).quantity
  const absolute = (id: ReadingId) => {
    const typed = visit.readings[id]?.quantity as Quantity<'gauge pressure' | 'absolute pressure'> | undefined
    const pressure = typed && toAbsolute(typed, site, id)
    return pressure?.ok ? pressure.value.si : undefined
  }
  const [outdoor_K, returnAir_K] = [si('condenser-entering-air'), si('return-air-dry-bulb')]
  const suctionPressure_Pa = absolute('suction-pressure')
  if (outdoor_K === undefined || returnAir_K === undefined || suctionPressure_Pa === undefined) return undefined
  const [atRest_Pa, atRest_K] = [absolute('standstill-pressure'), si('standstill-temperature')]
  return {
    outdoor_K,
    returnAir_K,
    returnWetBulb_K,
    airPressure_Pa: site.si,
    suctionPressure_Pa,
    ...known({
      suctionLine_K: si('suction-temperature'),
      liquidPressure_Pa: absolute('liquid-pressure'),
      liquidLine_K: si('liquid-temperature'),
      dischargeLine_K: si('discharge-temperature'),
      condenserLeavingAir_K: si('condenser-leaving-air'),
      supplyAir_K: si('supply-air-dry-bulb'),
      drierInlet_K: si('drier-inlet-temperature'),
      drierOutlet_K: si('drier-outlet-temperature'),
      compressorPower_W: si('compressor-power'),
      power_W: si('system-power'),
    }),
    ...(atRest_Pa !== undefined && atRest_K !== undefined
      ? { standstill: { pressure_Pa: atRest_Pa, ambient_K: atRest_K } }
      : {}),
  }
}

const known = <T extends object>(fields: T) =>
  Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined)) as {
    readonly [K in keyof T]?: Exclude<T[K], undefined>
  }
