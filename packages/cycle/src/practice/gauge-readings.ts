import type { Dimension } from '@chargewright/quantity'
import type { System } from '../system.ts'
import type { GaugeValues } from './gauges.ts'

/** One line of what is read, with what follows from two readings where that is of use. */
export interface GaugeReading {
  readonly name: string
  readonly label: string
  readonly dimension: Dimension
  readonly si: number
}

/** The instruments, and superheat and subcooling from them. Pressures absolute; they are shown as gauges show them. */
export function gaugeReadings(values: GaugeValues, { properties }: System): readonly GaugeReading[] {
  const superheat = values.suctionTemperature_K - properties.saturated(values.suctionPressure_Pa).dew_K
  const subcooling = properties.saturated(values.liquidPressure_Pa).bubble_K - values.liquidTemperature_K
  const line = (name: string, label: string, dimension: Dimension, si: number): GaugeReading => ({
    name,
    label,
    dimension,
    si,
  })
  return [
    line('suction_pressure', 'Suction pressure', 'absolute pressure', values.suctionPressure_Pa),
    line('suction_temperature', 'Suction line', 'temperature', values.suctionTemperature_K),
    line('superheat', 'Superheat', 'temperature difference', superheat),
    line('liquid_pressure', 'Liquid pressure', 'absolute pressure', values.liquidPressure_Pa),
    line('liquid_temperature', 'Liquid line', 'temperature', values.liquidTemperature_K),
    line('subcooling', 'Subcooling', 'temperature difference', subcooling),
    line('device_pressure', 'Pressure after the drier', 'absolute pressure', values.devicePressure_Pa),
    line('discharge_temperature', 'Discharge line', 'temperature', values.dischargeTemperature_K),
    line('supply_air', 'Supply air', 'temperature', values.supplyAir_K),
    line('leaving_condenser_air', 'Air leaving the condenser', 'temperature', values.leavingCondenserAir_K),
    line('compressor_power', 'Compressor power', 'power', values.compressorPower_W),
  ]
}
