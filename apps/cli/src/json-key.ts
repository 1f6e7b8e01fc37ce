import type { Dimension } from '@chargewright/quantity'

/** What a key says of the unit of its value. An uncertainty of a point is a difference in the same unit. */
const SUFFIX: Readonly<Record<Dimension, string>> = {
  'absolute pressure': 'Pa',
  'gauge pressure': 'Pa_gauge',
  'pressure difference': 'Pa',
  temperature: 'K',
  'temperature difference': 'K',
  mass: 'kg',
  length: 'm',
  'mass per length': 'kg_m',
  elevation: 'm',
  volume: 'm3',
  airflow: 'm3_s',
  'specific airflow': 'm3_sW',
  velocity: 'm_s',
  'mass flow': 'kg_s',
  power: 'W',
  'cooling capacity': 'W',
  'specific enthalpy': 'J_kg',
  current: 'A',
  voltage: 'V',
  'relative humidity': 'fraction',
  duration: 's',
}

/** `superheat_K`: a name and the SI unit of its value. */
export const siKey = (name: string, dimension: Dimension) => `${name}_${SUFFIX[dimension]}`

/** `evaporatingTemperature` as JSON keys are written: `evaporating_temperature`. */
export const measureKey = (id: string) => id.replace(/[A-Z]/g, (letter) => `_${letter.toLowerCase()}`)
