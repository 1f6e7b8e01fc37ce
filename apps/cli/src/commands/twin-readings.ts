import type { Readings } from '@chargewright/cycle'
import type { Dimension } from '@chargewright/quantity'

/** A reading of the model as a page shows it. Pressures of the model are absolute; a gauge shows them. */
export interface TwinReading {
  readonly name: keyof Readings
  readonly label: string
  readonly dimension: Dimension
}

export const TWIN_READINGS: readonly TwinReading[] = [
  { name: 'suctionPressure_Pa', label: 'Suction pressure', dimension: 'gauge pressure' },
  { name: 'suctionTemperature_K', label: 'Suction line', dimension: 'temperature' },
  { name: 'superheat_K', label: 'Superheat', dimension: 'temperature difference' },
  { name: 'liquidPressure_Pa', label: 'Liquid pressure', dimension: 'gauge pressure' },
  { name: 'liquidTemperature_K', label: 'Liquid line', dimension: 'temperature' },
  { name: 'subcooling_K', label: 'Subcooling', dimension: 'temperature difference' },
  { name: 'dischargeTemperature_K', label: 'Discharge line', dimension: 'temperature' },
  { name: 'evaporating_K', label: 'Evaporating, dew', dimension: 'temperature' },
  { name: 'condensing_K', label: 'Condensing, dew', dimension: 'temperature' },
  { name: 'supplyAir_K', label: 'Supply air', dimension: 'temperature' },
  { name: 'leavingCondenserAir_K', label: 'Air leaving the condenser', dimension: 'temperature' },
  { name: 'capacity_W', label: 'Net cooling', dimension: 'cooling capacity' },
  { name: 'power_W', label: 'Power, fans included', dimension: 'power' },
  { name: 'flow_kg_s', label: 'Refrigerant flow', dimension: 'mass flow' },
]

/** What a what-if shows of each state. */
export const WHAT_IF_COLUMNS: readonly (TwinReading & { readonly head: string })[] = [
  { name: 'superheat_K', head: 'superheat', label: 'Superheat', dimension: 'temperature difference' },
  { name: 'subcooling_K', head: 'subcooling', label: 'Subcooling', dimension: 'temperature difference' },
  { name: 'suctionPressure_Pa', head: 'suction', label: 'Suction pressure', dimension: 'gauge pressure' },
  { name: 'liquidPressure_Pa', head: 'liquid', label: 'Liquid pressure', dimension: 'gauge pressure' },
  { name: 'capacity_W', head: 'cooling', label: 'Net cooling', dimension: 'cooling capacity' },
]
