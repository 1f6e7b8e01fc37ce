import {
  type Evidence,
  evidence,
  type Measure,
  type Problem,
  type Quantity,
  say,
  subtract,
} from '@chargewright/quantity'
import type { Refrigerant } from '@chargewright/refrigerant'
import { lastChange, type ReadingId, type Visit } from '@chargewright/visit'
import { OF_THE_SITE } from '../visit-sets.ts'
import { airflowPerCapacity } from './airflow-per-capacity.ts'
import { wetBulbFromHumidity } from './return-wet-bulb.ts'
import { saturated } from './saturated.ts'
import { sitePressure } from './site-pressure.ts'
import { typedIn } from './typed-in.ts'

type Temperature = Quantity<'temperature'>
type Difference = Quantity<'temperature difference'>

/** What is derived from the readings of a visit; absent where a reading it needs is absent. */
export interface Measures {
  readonly evaporatingTemperature?: Measure<Temperature>
  readonly condensingTemperature?: Measure<Temperature>
  /** At the compressor: suction line minus dew at the pressure of the same port. */
  readonly superheat?: Measure<Difference>
  /** At the coil outlet, with the pressure of the suction port. */
  readonly valveSuperheat?: Measure<Difference>
  readonly subcooling?: Measure<Difference>
  readonly returnWetBulb?: Measure<Temperature>
  readonly temperatureSplit?: Measure<Difference>
  readonly airflowPerCapacity?: Measure<Quantity<'specific airflow'>>
  readonly drierDrop?: Measure<Difference>
  /** Condensing temperature (bubble) above the air entering the condenser. */
  readonly condensingRise?: Measure<Difference>
}

export type MeasureId = keyof Measures

/** Measures of a visit, and the problems met on the way (a pressure outside the refrigerant's range, for instance). */
export function measure(
  visit: Visit,
  refrigerant: Refrigerant,
): { readonly measures: Measures; readonly problems: readonly Problem[] } {
  const problems: Problem[] = []
  const { readings } = visit
  const site = sitePressure(visit, problems)
  const typed = (id: ReadingId): Measure<Temperature> | undefined => {
    const reading = readings[id]
    return reading && { quantity: reading.quantity as Temperature, evidence: typedIn(reading) }
  }

  const evaporatingTemperature = saturated(readings['suction-pressure'], 'dew', refrigerant, site, problems)
  const condensingTemperature = saturated(readings['liquid-pressure'], 'bubble', refrigerant, site, problems)
  const returnWetBulb = typed('return-air-wet-bulb') ?? wetBulbFromHumidity(visit, site, problems)
  const enteringAir = typed('condenser-entering-air')
  const isOneState = ofOneState(visit)
  const of = (needed: readonly ReadingId[], found: Measure<Difference> | undefined) =>
    isOneState(needed) ? found : undefined

  return {
    problems,
    measures: present({
      evaporatingTemperature,
      condensingTemperature,
      returnWetBulb,
      superheat: of(
        ['suction-pressure', 'suction-temperature'],
        difference('Superheat', typed('suction-temperature'), evaporatingTemperature),
      ),
      valveSuperheat: of(
        ['suction-pressure', 'evaporator-outlet-temperature'],
        difference('Superheat at the coil outlet', typed('evaporator-outlet-temperature'), evaporatingTemperature, [
          evidence(say`pressure at the coil outlet taken as that of the suction port`, 'assumption'),
        ]),
      ),
      subcooling: of(
        ['liquid-pressure', 'liquid-temperature'],
        difference('Subcooling', condensingTemperature, typed('liquid-temperature')),
      ),
      temperatureSplit: of(
        ['return-air-dry-bulb', 'supply-air-dry-bulb'],
        difference('Temperature split', typed('return-air-dry-bulb'), typed('supply-air-dry-bulb')),
      ),
      drierDrop: of(
        ['drier-inlet-temperature', 'drier-outlet-temperature'],
        difference(
          'Temperature drop across the drier',
          typed('drier-inlet-temperature'),
          typed('drier-outlet-temperature'),
        ),
      ),
      condensingRise: of(
        ['liquid-pressure', 'condenser-entering-air'],
        difference('Condensing above entering air', condensingTemperature, enteringAir),
      ),
      airflowPerCapacity: airflowPerCapacity(visit),
    }),
  }
}

/**
 * Whether readings tell of one state of the system: none of the circuit from before its last change beside one from after
 * it. Between the two a superheat would be that of no system.
 */
function ofOneState(visit: Visit): (needed: readonly ReadingId[]) => boolean {
  const change = lastChange(visit)?.position ?? -1
  return (needed) => {
    const positions = needed.flatMap((id) => visit.readings[id] ?? [])
    const isBefore = positions.some(({ what, position }) => position < change && !OF_THE_SITE.includes(what))
    return !(isBefore && positions.some(({ position }) => position > change))
  }
}

function difference(
  name: string,
  warm: Measure<Temperature> | undefined,
  cold: Measure<Temperature> | undefined,
  assumptions: readonly Evidence[] = [],
): Measure<Difference> | undefined {
  if (!warm || !cold) return undefined
  const value = subtract(warm.quantity, cold.quantity)
  return {
    quantity: value,
    evidence: evidence(say`${name} ${value}`, undefined, [warm.evidence, cold.evidence, ...assumptions]),
  }
}

type Possible<T> = { readonly [K in keyof T]-?: T[K] | undefined }

function present(measures: Possible<Measures>): Measures {
  return Object.fromEntries(Object.entries(measures).filter(([, value]) => value !== undefined)) as Measures
}
