import type { Dimension } from '@chargewright/quantity'
import {
  type Accuracy,
  AIRFLOW,
  CLAMP_AMMETER,
  HYGROMETER,
  LIQUID_GAUGE,
  POWER_METER,
  SUCTION_GAUGE,
  THERMOMETER,
  VOLTMETER,
} from './plain-instrument.ts'

/** The stations of the walk, in walking order; the same numbers mark the points on every picture. */
export const STATIONS = [
  { id: 'evaporator', number: 1, label: 'Evaporator' },
  { id: 'suction', number: 2, label: 'Suction, at compressor' },
  { id: 'discharge', number: 3, label: 'Discharge' },
  { id: 'condenser-air', number: 4, label: 'Condenser air' },
  { id: 'liquid-line', number: 5, label: 'Liquid line' },
  { id: 'power', number: 6, label: 'Power' },
] as const

export type StationId = (typeof STATIONS)[number]['id']

/** One thing that can be read: everything a form, a prompt or a check needs to know about it. */
export interface ReadingKind {
  readonly label: string
  readonly station: StationId
  /** Accepted dimensions; where a bare unit fits two, the first one is meant. */
  readonly accepts: readonly Dimension[]
  /** Outside this (SI; absolute pressure for pressures) the entry is questioned, not refused. Common practice. */
  readonly plausible: readonly [min: number, max: number]
  readonly accuracy: Accuracy
  /** What the reading would tell, shown where it is missing. */
  readonly tells: string
}

const celsius = (low: number, high: number): readonly [number, number] => [low + 273.15, high + 273.15]

const temperature = (
  label: string,
  station: StationId,
  plausible: readonly [number, number],
  tells: string,
): ReadingKind => ({ label, station, accepts: ['temperature'], plausible, accuracy: THERMOMETER, tells })

const pressure = (label: string, station: StationId, accuracy: Accuracy, tells: string): ReadingKind => ({
  label,
  station,
  accepts: ['gauge pressure', 'absolute pressure'],
  plausible: [10e3, 15e6],
  accuracy,
  tells,
})

const power = (label: string, tells: string): ReadingKind => ({
  label,
  station: 'power',
  accepts: ['power'],
  plausible: [20, 100e3],
  accuracy: POWER_METER,
  tells,
})

/** Every reading the product knows, in walking order. */
export const READINGS = {
  'return-air-dry-bulb': temperature(
    'Return air, dry bulb',
    'evaporator',
    celsius(-45, 50),
    'the load on the evaporator',
  ),
  'return-air-wet-bulb': temperature(
    'Return air, wet bulb',
    'evaporator',
    celsius(-20, 40),
    'the load, moisture included; the superheat target hangs on it',
  ),
  'return-air-humidity': {
    label: 'Return air, humidity',
    station: 'evaporator',
    accepts: ['relative humidity'],
    plausible: [0.05, 1],
    accuracy: HYGROMETER,
    tells: 'the wet bulb, where none was read',
  },
  'supply-air-dry-bulb': temperature(
    'Supply air, dry bulb',
    'evaporator',
    celsius(-50, 45),
    'the temperature split, a check on the airflow',
  ),
  airflow: {
    label: 'Airflow',
    station: 'evaporator',
    accepts: ['airflow'],
    plausible: [0.01, 20],
    accuracy: AIRFLOW,
    tells: 'whether little air, not little charge, starves the coil',
  },
  'box-temperature': temperature(
    'Box',
    'evaporator',
    celsius(-60, 40),
    'whether the load is high enough to judge a sight glass',
  ),
  'evaporator-outlet-temperature': temperature(
    'Coil outlet, at the bulb',
    'evaporator',
    celsius(-60, 50),
    'the superheat the valve holds',
  ),

  'suction-pressure': pressure('Suction pressure', 'suction', SUCTION_GAUGE, 'the evaporating temperature'),
  'suction-temperature': temperature('Suction line', 'suction', celsius(-60, 60), 'the superheat at the compressor'),

  'discharge-temperature': temperature('Discharge line', 'discharge', celsius(0, 160), 'how hard the compressor works'),

  'condenser-entering-air': temperature(
    'Air entering condenser',
    'condenser-air',
    celsius(-40, 60),
    'the outdoor condition; the superheat target hangs on it',
  ),
  'condenser-leaving-air': temperature(
    'Air leaving condenser',
    'condenser-air',
    celsius(-40, 80),
    'little condenser air from gas that will not condense',
  ),
  'standstill-pressure': pressure(
    'Pressure at rest',
    'condenser-air',
    SUCTION_GAUGE,
    'gas that will not condense from an overcharge: stopped, equalised, beside the air temperature at rest',
  ),
  'standstill-temperature': temperature(
    'Air at rest',
    'condenser-air',
    celsius(-40, 60),
    'what the pressure at rest should be: both coils stand in this air and have taken its temperature',
  ),

  'liquid-pressure': pressure('Liquid pressure', 'liquid-line', LIQUID_GAUGE, 'the condensing temperature'),
  'liquid-temperature': temperature(
    'Liquid line',
    'liquid-line',
    celsius(-40, 80),
    'the subcooling: how much liquid stands in the condenser',
  ),
  'drier-inlet-temperature': temperature(
    'Before drier',
    'liquid-line',
    celsius(-40, 80),
    'a restriction in the drier, together with its outlet',
  ),
  'drier-outlet-temperature': temperature(
    'After drier',
    'liquid-line',
    celsius(-40, 80),
    'a restriction in the drier, together with its inlet',
  ),

  'compressor-current': {
    label: 'Compressor current',
    station: 'power',
    accepts: ['current'],
    plausible: [0.1, 500],
    accuracy: CLAMP_AMMETER,
    tells: 'the load on the compressor',
  },
  'compressor-power': power('Compressor power', 'how hard the compressor works, and whether it pumps what it should'),
  'system-power': power(
    'Power of the whole system',
    'the same with both fans in it, where the compressor has no meter',
  ),
  'supply-voltage': {
    label: 'Supply voltage',
    station: 'power',
    accepts: ['voltage'],
    plausible: [80, 700],
    accuracy: VOLTMETER,
    tells: 'whether the current can be compared with a curve',
  },
} as const satisfies Readonly<Record<string, ReadingKind>>

export type ReadingId = keyof typeof READINGS

export const READING_IDS = Object.keys(READINGS) as readonly ReadingId[]

/** The entry of a reading with its literal types widened, for code that treats all readings alike. */
export const readingKind = (id: ReadingId): ReadingKind => READINGS[id]
