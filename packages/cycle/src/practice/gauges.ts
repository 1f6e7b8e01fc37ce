import type { Readings } from '../readings.ts'
import type { Conditions } from '../system.ts'
import type { Random } from './scenario.ts'

/**
 * Readings on the practice bench: how fast each follows the system (first-order lag, s), the limit of its instrument's
 * constant error, and its scatter. Limits: California residential appendix RA3.2, 2008 and 2013, READ; the rest and all
 * lags are *common practice*.
 */
export const GAUGES = {
  suctionPressure_Pa: { lag_s: 60, limit: 24_000, scatter: 2_000 },
  suctionTemperature_K: { lag_s: 150, limit: 0.72, scatter: 0.1 },
  liquidPressure_Pa: { lag_s: 90, limit: 48_000, scatter: 4_000 },
  liquidTemperature_K: { lag_s: 180, limit: 0.72, scatter: 0.1 },
  dischargeTemperature_K: { lag_s: 300, limit: 2, scatter: 0.3 },
  supplyAir_K: { lag_s: 120, limit: 0.72, scatter: 0.1 },
  leavingCondenserAir_K: { lag_s: 120, limit: 0.72, scatter: 0.2 },
  devicePressure_Pa: { lag_s: 90, limit: 48_000, scatter: 4_000 },
  compressorPower_W: { lag_s: 40, limit: 60, scatter: 10 },
} as const satisfies Partial<Readonly<Record<keyof Readings, unknown>>>

export type Gauge = keyof typeof GAUGES

export const GAUGE_NAMES = Object.keys(GAUGES) as readonly Gauge[]

export type GaugeValues = Readonly<Record<Gauge, number>>

/** The constant errors of one set of instruments. */
export function drawInstruments(random: Random): GaugeValues {
  return each((name) => GAUGES[name].limit * (2 * random() - 1))
}

/** What the gauges move towards. */
export const truthOf = (readings: Readings): GaugeValues => each((name) => readings[name])

/** All gauges after some seconds of following the truth. */
export function followed(shown: GaugeValues, truth: GaugeValues, seconds: number): GaugeValues {
  return each((name) => truth[name] + (shown[name] - truth[name]) * Math.exp(-seconds / GAUGES[name].lag_s))
}

/** What a technician reads now: lagged value, the instrument's error, and scatter. */
export function read(shown: GaugeValues, errors: GaugeValues, random: Random): GaugeValues {
  return each((name) => shown[name] + errors[name] + GAUGES[name].scatter * (2 * random() - 1))
}

/** Everything at rest, before the first start: the temperature of the air on either side. */
export function atRest({ outdoor, indoor }: Conditions, equalised_Pa: number): GaugeValues {
  return {
    suctionPressure_Pa: equalised_Pa,
    suctionTemperature_K: outdoor.dryBulb_K,
    liquidPressure_Pa: equalised_Pa,
    liquidTemperature_K: outdoor.dryBulb_K,
    dischargeTemperature_K: outdoor.dryBulb_K,
    supplyAir_K: indoor.dryBulb_K,
    leavingCondenserAir_K: outdoor.dryBulb_K,
    devicePressure_Pa: equalised_Pa,
    compressorPower_W: 0,
  }
}

function each(value: (name: Gauge) => number): GaugeValues {
  return Object.fromEntries(GAUGE_NAMES.map((name) => [name, value(name)])) as GaugeValues
}
