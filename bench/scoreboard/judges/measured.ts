import { type Properties, propertiesOf } from '../../../packages/cycle/src/index.ts'
import { findRefrigerant } from '../../../packages/refrigerant/src/index.ts'
import type { Seen } from '../verdict.ts'

/** What every method reduces the readings to; undefined where a reading is missing. K. */
export interface Measured {
  readonly evaporating: number
  readonly superheat: number
  readonly condensing: number | undefined
  readonly subcooling: number | undefined
  readonly discharge: number | undefined
  readonly condenserAirRise: number | undefined
  readonly supplyAirDrop: number | undefined
}

/** Superheat against dew, subcooling against bubble, each at the pressure read beside it. */
export function measured({ plate, readings }: Seen): Measured {
  const at = propertiesNamed(plate.refrigerant).saturated
  const suction = at(readings.suctionPressure_Pa)
  const liquid = readings.liquidPressure_Pa === undefined ? undefined : at(readings.liquidPressure_Pa)
  const less = (a: number | undefined, b: number | undefined) =>
    a === undefined || b === undefined ? undefined : a - b
  return {
    evaporating: suction.dew_K,
    superheat: readings.suctionLine_K - suction.dew_K,
    condensing: liquid?.dew_K,
    subcooling: less(liquid?.bubble_K, readings.liquidLine_K),
    discharge: readings.dischargeLine_K,
    condenserAirRise: less(readings.condenserLeavingAir_K, readings.outdoor_K),
    supplyAirDrop: less(readings.returnAir_K, readings.supplyAir_K),
  }
}

/** The tables of a refrigerant that the population draws; made once. */
export function propertiesNamed(name: string): Properties {
  const found = findRefrigerant(name)
  const tables = found.ok ? propertiesOf(found.value) : found
  if (!tables.ok) throw new Error(`no tables for ${name}`)
  return tables.value
}
