/**
 * Errors of the instruments of one visit as standard deviations: what an instrument is off by during the whole visit,
 * and what comes anew with each reading.
 */
export interface Instruments {
  readonly suctionGauge_Pa: Errors
  readonly liquidGauge_Pa: Errors
  /** Of the difference between pipe and surroundings that a clamp in poor contact lets in; comes on top of the sensor. */
  readonly clampPull: number
  readonly pipe_K: Errors
  readonly air_K: Errors
  readonly wetBulb_K: Errors
  /** Of power, as a share. */
  readonly power: Errors
}

export interface Errors {
  readonly visit: number
  readonly reading: number
}

/**
 * Digital gauges within 3.5 psi and 7 psi, thermometers within 0.1 % and 1.3 °F, taken as limits that nine of ten
 * instruments keep; the spread from one reading to the next, clamps, wet bulb and power *common practice*.
 *
 * @source 2008 and 2013 residential field verification, RA3.2.2, READ
 */
export const COMMON_INSTRUMENTS: Instruments = {
  suctionGauge_Pa: { visit: 12_000, reading: 5_000 },
  liquidGauge_Pa: { visit: 24_000, reading: 10_000 },
  clampPull: 0.03,
  pipe_K: { visit: 0.4, reading: 0.25 },
  air_K: { visit: 0.4, reading: 0.25 },
  wetBulb_K: { visit: 0.5, reading: 0.25 },
  power: { visit: 0.03, reading: 0.01 },
}
