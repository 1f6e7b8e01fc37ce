import type { DeviceCalibration } from './calibration.ts'

type Response = DeviceCalibration['chargeResponse']

/** By how much the twin's charge must be off to read like a system whose charge is off so much; both over the right charge. */
export const twinDeviation = (deviation: number, { short, over }: Response): number =>
  deviation * (deviation < 0 ? short : over)

/**
 * By how much the twin's charge is off on account of a deviation that was there from the start, where a share was weighed in
 * since: both together answer as one deviation, which may lie on the other side of the right charge.
 */
export const twinDeviationAfter = (added: number, deviation: number, response: Response): number =>
  twinDeviation(added + deviation, response) - twinDeviation(added, response)

/** Near the right charge, where both sides meet. */
export const meanResponse = ({ short, over }: Response): number => Math.sqrt(short * over)
