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
export const THERMOMETER: Accuracy = {
  limit: 1.4 * F,
  fraction: 0,
  source: 'regulation limit for field thermometers (RA3.2.2.2.1, 2008)',
}
// The same regulation, 2013 edition, RA3.2.2: ±3.5 psi suction, ±7.0 psi liquid line. READ.
export const SUCTION_GAUGE: Accuracy = {
  limit: 3.5 * PSI,
  fraction: 0,
  source: 'regulation limit for suction gauges (RA3.2.2, 2013)',
}
export const LIQUID_GAUGE: Accuracy = {
  limit: 7 * PSI,
  fraction: 0,
  source: 'regulation limit for liquid-line gauges (RA3.2.2, 2013)',
}
export const HYGROMETER: Accuracy = {
  limit: 0.03,
  fraction: 0,
  source: 'ventilated hygrometer, 2 to 5 % RH (ASTM E337 as quoted)',
}
export const CLAMP_AMMETER: Accuracy = { limit: 0.1, fraction: 0.02, source: 'clamp ammeter, common practice' }
// ±2 % of the reading; 5 % where the power factor is assumed. REMEMBERED.
export const POWER_METER: Accuracy = { limit: 10, fraction: 0.04, source: 'hand-held power meter, common practice' }
export const VOLTMETER: Accuracy = { limit: 1, fraction: 0.01, source: 'hand-held voltmeter, common practice' }
// Resolution 1 to 10 g, ±(0.05 to 0.1 % of the reading + 1 count). REMEMBERED, common practice; the middle.
export const CHARGING_SCALE: Accuracy = { limit: 0.005, fraction: 0.001, source: 'charging scale, common practice' }
export const AIRFLOW: Accuracy = { limit: 0, fraction: 0.1, source: 'field airflow measurement, common practice' }
