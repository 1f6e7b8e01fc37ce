import type { PressureLog } from './pressure-log.ts'
import { levelled } from './rise-model.ts'

/** Sums over a log, each taken about its mean, so that the starting pressure has dropped out. */
export interface Moments {
  readonly tt: number
  readonly ty: number
  readonly yy: number
  readonly tg: number
  readonly gg: number
  readonly gy: number
}

/** Moments of time t, pressure y and, at one levelling time, of the levelled share g. */
export function moments(log: PressureLog, levellingTime_s: number): Moments {
  const shares = Float64Array.from(log, (entry) => levelled(entry.elapsed_s, levellingTime_s))
  const mean = { t: 0, y: 0, g: 0 }
  log.forEach(({ elapsed_s, pressure_Pa }, i) => {
    mean.t += elapsed_s / log.length
    mean.y += pressure_Pa / log.length
    mean.g += shares[i]! / log.length
  })
  const sums = { tt: 0, ty: 0, yy: 0, tg: 0, gg: 0, gy: 0 }
  log.forEach(({ elapsed_s, pressure_Pa }, i) => {
    const [t, y, g] = [elapsed_s - mean.t, pressure_Pa - mean.y, shares[i]! - mean.g]
    sums.tt += t * t
    sums.ty += t * y
    sums.yy += y * y
    sums.tg += t * g
    sums.gg += g * g
    sums.gy += g * y
  })
  return sums
}

/**
 * Slopes of least squares of y on t and g together, and the sum of squares they leave. Where the readings stand so that
 * line and curve cannot be told apart, the line takes it all.
 */
export function leakAndMoisture(m: Moments): { readonly leak: number; readonly rise: number; readonly left: number } {
  const det = m.tt * m.gg - m.tg ** 2
  if (!(det > ALIKE * m.tt * m.gg)) {
    return { leak: m.ty / m.tt, rise: 0, left: Math.max(0, m.yy - m.ty ** 2 / m.tt) }
  }
  const leak = (m.gg * m.ty - m.tg * m.gy) / det
  const rise = (m.tt * m.gy - m.tg * m.ty) / det
  return { leak, rise, left: Math.max(0, m.yy - leak * m.ty - rise * m.gy) }
}

/** Share of its sum of squares that the time keeps beside the levelled share, below which nothing is left but rounding. */
export const ALIKE = 1e-12
