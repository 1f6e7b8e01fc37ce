import type { ChargeEstimate } from './diagnosis.ts'
import { type Mixture, moments, quantile } from './mixture.ts'

/** @param width factor on the interval, from the calibration */
export function chargeEstimate(mixture: Mixture, width: number): ChargeEstimate {
  const { mean, sd } = moments(mixture)
  const from = (below: number) => mean + width * (quantile(mixture, below) - mean)
  return { mean, sd: width * sd, low: from(0.05), high: from(0.95) }
}
