import type { Dimension } from '@chargewright/quantity'
import type { InstrumentId } from './plain-instrument.ts'

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
  readonly instrument: InstrumentId
  /** What the reading would tell, shown where it is missing. */
  readonly tells: string
  /** How to read it well, in the trade's words. Common practice. */
  readonly howTo: string
}

const celsius = (low: number, high: number): readonly [number, number] => [low + 273.15, high + 273.15]

type Temperature = Pick<ReadingKind, 'label' | 'station' | 'plausible' | 'tells' | 'howTo'>

const pipe = (kind: Temperature): ReadingKind => ({
  ...kind,
  accepts: ['temperature'],
  instrument: 'pipe-thermometer',
})
const air = (kind: Temperature): ReadingKind => ({ ...kind, accepts: ['temperature'], instrument: 'air-thermometer' })

const power = (kind: Pick<ReadingKind, 'label' | 'tells' | 'howTo'>): ReadingKind => ({
  ...kind,
  station: 'power',
  accepts: ['power'],
  plausible: [20, 100e3],
  instrument: 'power-meter',
})

const PRESSURE = { accepts: ['gauge pressure', 'absolute pressure'], plausible: [10e3, 15e6] } as const

/** Every reading the product knows, in walking order. */
export const READINGS = {
  'return-air-dry-bulb': air({
    label: 'Return air, dry bulb',
    station: 'evaporator',
    plausible: celsius(-45, 50),
    tells: 'the load on the evaporator',
    howTo: 'At the return, close to the coil, in the middle of the stream and out of sight of anything hot or cold.',
  }),
  'return-air-wet-bulb': air({
    label: 'Return air, wet bulb',
    station: 'evaporator',
    plausible: celsius(-20, 40),
    tells: 'the load, moisture included; the superheat target hangs on it',
    howTo:
      'Clean wick, soaked with clean water, in briskly moving air: wait until it falls no further, and read before it dries.',
  }),
  'return-air-humidity': {
    label: 'Return air, humidity',
    station: 'evaporator',
    accepts: ['relative humidity'],
    plausible: [0.05, 1],
    instrument: 'hygrometer',
    tells: 'the wet bulb, where none was read',
    howTo: 'Where the dry bulb was read, in the same stream; give the sensor some minutes to follow.',
  },
  'supply-air-dry-bulb': air({
    label: 'Supply air, dry bulb',
    station: 'evaporator',
    plausible: celsius(-50, 45),
    tells: 'the temperature split, a check on the airflow',
    howTo:
      'Some feet past the coil, where the air is mixed, with the probe dry and out of sight of the coil or a heater.',
  }),
  airflow: {
    label: 'Airflow',
    station: 'evaporator',
    accepts: ['airflow'],
    plausible: [0.01, 20],
    instrument: 'airflow-meter',
    tells: 'whether little air, not little charge, starves the coil',
    howTo: 'Filter in, panels shut and the blower at cooling speed, as it runs every day.',
  },
  'box-temperature': air({
    label: 'Box temperature',
    station: 'evaporator',
    plausible: celsius(-60, 40),
    tells: 'whether the load is high enough to judge a sight glass',
    howTo: 'In the air that goes back to the coil, away from the door and off the product.',
  }),
  'evaporator-outlet-temperature': pipe({
    label: 'Coil outlet, at the bulb',
    station: 'evaporator',
    plausible: celsius(-60, 50),
    tells: 'the superheat the valve holds',
    howTo: 'Beside the bulb on clean pipe, clamped at the side and not underneath, and insulated from the air.',
  }),

  'suction-pressure': {
    ...PRESSURE,
    label: 'Suction pressure',
    station: 'suction',
    instrument: 'low-side-gauge',
    tells: 'the evaporating temperature',
    howTo: 'Zero the gauge to the air first. Purge the hose, and read when the needle has come to rest.',
  },
  'suction-temperature': pipe({
    label: 'Suction line',
    station: 'suction',
    plausible: celsius(-60, 60),
    tells: 'the superheat at the compressor',
    howTo:
      'Near the port where the pressure is read, on clean bare copper, clamped at the side and insulated; wait until it stands still.',
  }),

  'discharge-temperature': pipe({
    label: 'Discharge line',
    station: 'discharge',
    plausible: celsius(0, 160),
    tells: 'how hard the compressor works',
    howTo: 'A hand’s width from the compressor, insulated. The pipe burns: put the clamp on before the start.',
  }),

  'condenser-entering-air': air({
    label: 'Air entering condenser',
    station: 'condenser-air',
    plausible: celsius(-40, 60),
    tells: 'the outdoor condition; the superheat target hangs on it',
    howTo: 'In the shade, in the stream that enters the coil, where no leaving air comes round again.',
  }),
  'condenser-leaving-air': air({
    label: 'Air leaving condenser',
    station: 'condenser-air',
    plausible: celsius(-40, 80),
    tells: 'little condenser air from non-condensables',
    howTo: 'In the stream off the fan, at several places between hub and rim; enter their mean.',
  }),
  'standstill-pressure': {
    ...PRESSURE,
    label: 'Standing pressure',
    station: 'condenser-air',
    instrument: 'low-side-gauge',
    tells:
      'air or other non-condensables from an overcharge: stopped, equalised, beside the temperature of the air around it',
    howTo: 'Compressor off, fans on, until the pressure stands still: that can take half an hour.',
  },
  'standstill-temperature': air({
    label: 'Air at standing pressure',
    station: 'condenser-air',
    plausible: celsius(-40, 60),
    tells: 'what the standing pressure should be: both coils stand in this air and have taken its temperature',
    howTo: 'At the coil, in the shade, at the moment at which the standing pressure is read.',
  }),

  'liquid-pressure': {
    ...PRESSURE,
    label: 'Liquid pressure',
    station: 'liquid-line',
    instrument: 'high-side-gauge',
    tells: 'the condensing temperature',
    howTo: 'Zero the gauge to the air first. At the liquid port if there is one: a discharge port reads higher.',
  },
  'liquid-temperature': pipe({
    label: 'Liquid line',
    station: 'liquid-line',
    plausible: celsius(-40, 80),
    tells: 'the subcooling: how much liquid stands in the condenser',
    howTo: 'Near the port where the pressure is read, before the drier, on clean copper, out of the sun and insulated.',
  }),
  'drier-inlet-temperature': pipe({
    label: 'Temperature before drier',
    station: 'liquid-line',
    plausible: celsius(-40, 80),
    tells: 'a restriction in the drier, together with its outlet',
    howTo: 'Read inlet and outlet with the same probe, one right after the other: so its error drops out.',
  }),
  'drier-outlet-temperature': pipe({
    label: 'Temperature after drier',
    station: 'liquid-line',
    plausible: celsius(-40, 80),
    tells: 'a restriction in the drier, together with its inlet',
    howTo: 'Read outlet and inlet with the same probe, one right after the other: so its error drops out.',
  }),

  'compressor-current': {
    label: 'Compressor current',
    station: 'power',
    accepts: ['current'],
    plausible: [0.1, 500],
    instrument: 'clamp-ammeter',
    tells: 'the load on the compressor',
    howTo: 'One conductor alone through the middle of the jaws, that of the compressor and not of its fan.',
  },
  'compressor-power': power({
    label: 'Compressor power',
    tells: 'how hard the compressor works, and whether it pumps what it should',
    howTo: 'Clamp on the conductor of the compressor alone, voltage at its terminals; of three phases take all.',
  }),
  'system-power': power({
    label: 'Power of the whole system',
    tells: 'the same with both fans in it, where the compressor has no meter',
    howTo: 'At the disconnect that feeds the whole system, with nothing else running on it.',
  }),
  'supply-voltage': {
    label: 'Supply voltage',
    station: 'power',
    accepts: ['voltage'],
    plausible: [80, 700],
    instrument: 'voltmeter',
    tells: 'whether the current can be compared with a curve',
    howTo: 'At the contactor, under load, between the same conductors at which the nameplate gives it.',
  },
} as const satisfies Readonly<Record<string, ReadingKind>>

export type ReadingId = keyof typeof READINGS

export const READING_IDS = Object.keys(READINGS) as readonly ReadingId[]

/** The entry of a reading with its literal types widened, for code that treats all readings alike. */
export const readingKind = (id: ReadingId): ReadingKind => READINGS[id]
