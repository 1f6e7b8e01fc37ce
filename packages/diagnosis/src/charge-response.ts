import type { DeviceCalibration } from './calibration.ts'

type Response = DeviceCalibration['chargeResponse']

/** By how much the twin's charge must be off to read like a system whose charge is off so much; both over the right charge. */
export const twinDeviation = (deviation: number, { short, over }: Response): number =>
  deviation * (deviation < 0 ? short : over)

/** Near the right charge, where both sides meet. */
export const meanResponse = ({ short, over }: Response): number => Math.sqrt(short * over)
