import { levenbergMarquardt } from 'ml-levenberg-marquardt'
import { leakAndMoisture, type Moments, moments } from './linear-part.ts'
import type { PressureLog } from './pressure-log.ts'
import { levelled } from './rise-model.ts'

/** A rise that levels faster than this share of the log looks like a step, and one slower than that multiple, a leak. */
const SHORTEST_SHARE = 0.02
const LONGEST_SHARE = 2
const STARTS = 16

/**
 * The levelling time that fits a log best, with or without a leak beside the moisture, between 2 % and 200 % of the
 * length of the log.
 *
 * Given the levelling time everything else is linear, so that only the time itself is searched (variable projection):
 * Levenberg and Marquardt's method starts from the best of sixteen.
 *
 * @returns s
 * @source Golub & Pereyra 1973, SIAM J. Numer. Anal. 10(2), 413–432
 */
export function levellingTime(log: PressureLog, leaks: boolean): number {
  const left = (tau: number) => slopes(moments(log, tau), leaks).left
  const starts = levellingTimes(log)
  const sums = starts.map(left)
  const start = starts[sums.indexOf(Math.min(...sums))]!
  const x = log.map((entry) => entry.elapsed_s)
  const meanTime = mean(x)
  const meanPressure = mean(log.map((entry) => entry.pressure_Pa))
  // In units of the range, because the method stops and steps by absolute amounts.
  const unit = Math.max(...log.map((entry) => Math.abs(entry.pressure_Pa - meanPressure)), Number.MIN_VALUE)
  const y = log.map((entry) => (entry.pressure_Pa - meanPressure) / unit)
  const curve = ([logTau = 0]: readonly number[]) => {
    const tau = Math.exp(logTau)
    const { leak, rise } = slopes(moments(log, tau), leaks)
    const meanShare = mean(x.map((t) => levelled(t, tau)))
    return (t: number) => (leak * (t - meanTime) + rise * (levelled(t, tau) - meanShare)) / unit
  }
  const { parameterValues } = levenbergMarquardt({ x, y }, curve, {
    initialValues: [Math.log(start)],
    minValues: [Math.log(starts[0]!)],
    maxValues: [Math.log(starts.at(-1)!)],
    damping: 1e-3,
    gradientDifference: 1e-4,
    centralDifference: true,
    errorTolerance: 1e-14,
    maxIterations: 12,
  })
  const found = Math.exp(parameterValues[0]!)
  return left(found) < left(start) ? found : start
}

/** Levelling times over the whole range, in equal ratios, rising, s. */
export function levellingTimes(log: PressureLog): readonly number[] {
  const length = log.at(-1)!.elapsed_s
  return inEqualRatios(SHORTEST_SHARE * length, LONGEST_SHARE * length, STARTS)
}

/** `count` values from `first` to `last` in equal ratios. */
export function inEqualRatios(first: number, last: number, count: number): readonly number[] {
  return Array.from({ length: count }, (_, i) => first * (last / first) ** (i / (count - 1)))
}

function slopes(m: Moments, leaks: boolean): { readonly leak: number; readonly rise: number; readonly left: number } {
  if (leaks) return leakAndMoisture(m)
  const rise = m.gy / m.gg
  return { leak: 0, rise, left: Math.max(0, m.yy - rise * m.gy) }
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, v) => sum + v, 0) / values.length
}
