import type { DeviceCalibration } from './calibration.ts'
import type { Row } from './rows.ts'
import type { Setting } from './setting.ts'

/**
 * How far the twin errs alike in two sets of one visit, as a correlation: less, the more refrigerant was weighed between
 * them. Were it always the same, the change from set to set would be believed to the tenth of a kelvin, and what the twin
 * gets wrong about it would be taken for another trouble.
 */
export const alike = (one: Setting, other: Setting): number => Math.exp(-Math.abs(one.added - other.added) / FADES_OVER)

/**
 * Over the nameplate charge. Own choice: on simulated plants 0.03 to 0.3 did alike, and with no fading readings after two
 * steps were called unexplained on six plants of ten (decision 35, `bench/scoreboard/after-steps.ts`).
 */
const FADES_OVER = 0.1

/**
 * Covariance of the rows, row after row, from what the discrepancy of each set has that is not in that of the newest set:
 * the unknown of the belief is the newest one's, to which the others are `alike`. An Ornstein–Uhlenbeck process along the
 * charge, conditional on one of its points.
 */
export function discrepancyBetweenSets(
  rows: readonly Row[],
  settings: readonly Setting[],
  { discrepancy }: Pick<DeviceCalibration, 'discrepancy'>,
): Float64Array {
  const newest = settings.at(-1)!
  const n = rows.length
  const covariance = new Float64Array(n * n)
  for (const [i, { set, observable }] of rows.entries()) {
    for (const [j, other] of rows.entries()) {
      if (other.observable !== observable) continue
      const [a, b] = [settings[set]!, settings[other.set]!]
      covariance[i * n + j] = discrepancy[observable] ** 2 * (alike(a, b) - alike(a, newest) * alike(b, newest))
    }
  }
  return covariance
}
