import { inEqualRatios, levellingTimes } from './levelling-time.ts'
import { ALIKE, leakAndMoisture, moments } from './linear-part.ts'
import type { PressureLog } from './pressure-log.ts'

/** A leak in Pa/s: the best value, and the ends of its 90 % interval, of which the lower may lie below zero. */
export interface LeakInterval {
  readonly best: number
  readonly low: number
  readonly high: number
}

/** Levelling times tried within the stretch that the log allows. */
const TRIED = 24
/** The line has two unknowns less: 95 % of chi-squared with two degrees of freedom over 90 % of that with one. */
const LINE_RULED_OUT = 5.991 / 2.706

/**
 * Every leak that the log allows beside some amount of moisture at some levelling time: those whose sum of squares
 * exceeds the least one by no more than `allowance(least sum)`.
 *
 * For one levelling time the sum of squares is a parabola in the leak, cut off where the moisture would have to be
 * negative; the interval is the union over the levelling times. Taking the interval of the model that happened to fit
 * best would be shorter, and wrong whenever the choice of the model was. For the same reason the straight line keeps
 * its own interval as long as the log does not rule it out: where there is no moisture, a curve fitted to noise would
 * else cut the upper end short.
 *
 * @param bestTime the levelling time that fits best, s
 * @source profile likelihood: Bates & Watts 1988, Nonlinear Regression Analysis and Its Applications, ch. 6
 */
export function leakInterval(
  log: PressureLog,
  bestTime: number,
  allowance: (least: number) => number,
): LeakInterval & { readonly left: number } {
  const line = leakAlone(log)
  const optimum = besideMoisture(log, bestTime)
  const best = optimum.left < line.left ? optimum : line
  const reach = best.left + allowance(best.left)
  const curves = allowedTimes(log, bestTime, reach).map((tau) => besideMoisture(log, tau))
  const ends = [line, optimum, ...curves].flatMap((curve) => endsWithin(curve, reach))
  const ruledOut = line.left > best.left + LINE_RULED_OUT * allowance(best.left)
  const lineEnds = ruledOut ? [] : endsWithin(line, line.left + allowance(best.left))
  const all = [...ends, ...lineEnds]
  return { best: best.leak, low: Math.min(...all), high: Math.max(...all), left: best.left }
}

interface Parabola {
  /** Leak at the bottom, and the sum of squares left there. */
  readonly leak: number
  readonly left: number
  readonly curvature: number
  /** Above this leak the moisture would be negative. */
  readonly most: number
}

function leakAlone(log: PressureLog): Parabola {
  const { tt, ty, yy } = moments(log, 1)
  const leak = ty / tt
  return { leak, left: Math.max(0, yy - leak * ty), curvature: tt, most: Number.POSITIVE_INFINITY }
}

function besideMoisture(log: PressureLog, tau: number): Parabola {
  const m = moments(log, tau)
  const { leak, rise, left } = leakAndMoisture(m)
  const curvature = Math.max(m.tt - m.tg ** 2 / m.gg, ALIKE * m.tt)
  const most = m.gy / m.tg
  if (rise >= 0) return { leak, left, curvature, most }
  // The least sum without negative moisture lies at the cut, where the curve is the straight line.
  return { leak: most, left: Number.POSITIVE_INFINITY, curvature, most }
}

function endsWithin({ leak, left, curvature, most }: Parabola, reach: number): readonly number[] {
  if (!(left <= reach)) return []
  const half = Math.sqrt((reach - left) / curvature)
  return [leak - half, Math.min(leak + half, most)]
}

/** Levelling times over the whole range, and densely over the stretch about the best one that stays within reach. */
function allowedTimes(log: PressureLog, bestTime: number, reach: number): readonly number[] {
  const all = levellingTimes(log)
  const within = (tau: number) => leakAndMoisture(moments(log, tau)).left <= reach
  if (!within(bestTime)) return all
  const first = lastWithin(within, bestTime, all[0]!)
  const last = lastWithin(within, bestTime, all.at(-1)!)
  return [...all, ...inEqualRatios(first, last, TRIED)]
}

/** The farthest time from `inside` towards `end` that is still within, by halving in the logarithm. */
function lastWithin(within: (tau: number) => boolean, inside: number, end: number): number {
  if (within(end)) return end
  let [good, bad] = [inside, end]
  for (let i = 0; i < 12; i++) {
    const middle = Math.sqrt(good * bad)
    if (within(middle)) good = middle
    else bad = middle
  }
  return good
}
