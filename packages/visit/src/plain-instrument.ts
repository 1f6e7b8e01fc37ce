import type { Dimension } from '@chargewright/quantity'

/**
 * How far a plain instrument may be off at most: `limit` (in SI) plus `fraction` of the reading. One that is checked as
 * the trade should check it is seldom that far off.
 */
export interface Accuracy {
  readonly limit: number
  readonly fraction: number
  readonly source: string
}

const F = 5 / 9
const PSI = 6894.757

// California 2008 residential field verification, RA3.2.2.2.1: ±(0.1 % of reading + 1.3 °F). READ. The share of the
// reading is taken at 100 °F (0.1 °F), because a share of an absolute temperature would mean nothing.
const THERMOMETER: Accuracy = {
  limit: 1.4 * F,
  fraction: 0,
  source: 'regulation limit for field thermometers (RA3.2.2.2.1, 2008)',
}
// The same regulation, 2013 edition, RA3.2.2: ±3.5 psi suction, ±7.0 psi liquid line. READ.
const SUCTION_GAUGE: Accuracy = {
  limit: 3.5 * PSI,
  fraction: 0,
  source: 'regulation limit for suction gauges (RA3.2.2, 2013)',
}
const LIQUID_GAUGE: Accuracy = {
  limit: 7 * PSI,
  fraction: 0,
  source: 'regulation limit for liquid-line gauges (RA3.2.2, 2013)',
}
const HYGROMETER: Accuracy = {
  limit: 0.03,
  fraction: 0,
  source: 'ventilated hygrometer, 2 to 5 % RH (ASTM E337 as quoted)',
}
const CLAMP_AMMETER: Accuracy = { limit: 0.1, fraction: 0.02, source: 'clamp ammeter, common practice' }
// ±2 % of the reading; 5 % where the power factor is assumed. REMEMBERED.
const POWER_METER: Accuracy = { limit: 10, fraction: 0.04, source: 'hand-held power meter, common practice' }
const VOLTMETER: Accuracy = { limit: 1, fraction: 0.01, source: 'hand-held voltmeter, common practice' }
// Resolution 1 to 10 g, ±(0.05 to 0.1 % of the reading + 1 count). REMEMBERED, common practice; the middle.
const CHARGING_SCALE: Accuracy = { limit: 0.005, fraction: 0.001, source: 'charging scale, common practice' }
const AIRFLOW: Accuracy = { limit: 0, fraction: 0.1, source: 'field airflow measurement, common practice' }

/** What a reading is taken with: its name, what it shows, and how far off a plain one may be. */
export interface InstrumentSort {
  readonly label: string
  readonly accepts: readonly Dimension[]
  readonly accuracy: Accuracy
}

const PRESSURE: readonly Dimension[] = ['gauge pressure', 'absolute pressure']

/** Every sort of instrument that a visit needs, in the order in which it is taken up. */
export const INSTRUMENTS = {
  'low-side-gauge': { label: 'Low-side gauge', accepts: PRESSURE, accuracy: SUCTION_GAUGE },
  'high-side-gauge': { label: 'High-side gauge', accepts: PRESSURE, accuracy: LIQUID_GAUGE },
  'pipe-thermometer': { label: 'Thermometer on the pipe', accepts: ['temperature'], accuracy: THERMOMETER },
  'air-thermometer': { label: 'Thermometer in the air', accepts: ['temperature'], accuracy: THERMOMETER },
  hygrometer: { label: 'Hygrometer', accepts: ['relative humidity'], accuracy: HYGROMETER },
  'airflow-meter': { label: 'Airflow meter', accepts: ['airflow'], accuracy: AIRFLOW },
  'clamp-ammeter': { label: 'Clamp ammeter', accepts: ['current'], accuracy: CLAMP_AMMETER },
  'power-meter': { label: 'Power meter', accepts: ['power'], accuracy: POWER_METER },
  voltmeter: { label: 'Voltmeter', accepts: ['voltage'], accuracy: VOLTMETER },
  'charging-scale': { label: 'Charging scale', accepts: ['mass'], accuracy: CHARGING_SCALE },
} as const satisfies Readonly<Record<string, InstrumentSort>>

export type InstrumentId = keyof typeof INSTRUMENTS

export const INSTRUMENT_IDS = Object.keys(INSTRUMENTS) as readonly InstrumentId[]

export const instrumentSort = (id: InstrumentId): InstrumentSort => INSTRUMENTS[id]
