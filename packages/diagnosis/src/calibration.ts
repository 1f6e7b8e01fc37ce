import type { Observable } from './observable.ts'

/**
 * How the twin errs on systems that it has never seen, learnt from systems known to be sound. Data, made for one
 * version of the twin and harmful with another.
 */
export interface Calibration {
  readonly version: string
  readonly twin: string
  /** Where it comes from, for the record: which systems, how many. */
  readonly source: string
  readonly devices: Readonly<Record<CalibratedDevice, DeviceCalibration>>
}

/** Devices that behave alike share a calibration: see `calibratedAs`. */
export type CalibratedDevice = 'fixed-orifice' | 'capillary' | 'thermostatic'

export interface DeviceCalibration {
  /** What the twin reads too low on sound systems, in the unit of the observable. */
  readonly offset: Readonly<Record<Observable, number>>
  /** Standard deviation of what the twin cannot explain with any design, in the unit of the observable. */
  readonly discrepancy: Readonly<Record<Observable, number>>
  /** Factors on the prior spreads of designs and units, by name; 1 where absent. */
  readonly spread: Readonly<Record<string, number>>
  /**
   * How much more strongly real systems answer to a charge that is off than the twin does, short and over: so much more
   * the twin's charge must be off to read the same. From wrongly charged systems whose charge was weighed.
   */
  readonly chargeResponse: { readonly short: number; readonly over: number }
  /** Standard deviation of a cause's effect on a reading, over the effect that the twin gives it. */
  readonly signature: number
  /** Power to which evidence is raised: below 1 where readings prove less than their spreads claim. */
  readonly flattening: number
  /** Factor on the standard deviation of the charge error. */
  readonly intervalWidth: number
  /** Sound systems that it was learnt from. */
  readonly learntFrom: number
}
