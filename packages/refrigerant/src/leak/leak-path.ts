import { evaluatePhase } from '../mixture/phase.ts'
import { type ClosedVolume, solveClosedVolume } from './closed-volume.ts'

/** One moment of a leak: molar densities over the whole volume, and the two phases' own. */
export interface LeakPoint {
  /** Share of the first mass that has gone. */
  readonly lost: number
  readonly content: Float64Array
  /** The liquid's share of the volume, 0 once it has gone. */
  readonly liquidShare: number
  readonly liquid: Float64Array
  readonly vapour: Float64Array
  readonly pressure_Pa: number
}

/**
 * A slow leak at constant temperature, as a differential equation: what leaves has the composition of the phase at the
 * leak, and both phases stay in equilibrium with each other (Rayleigh's distillation, here in a closed volume). Solved
 * by the classical method of Runge and Kutta in ln(content): a trace can shrink as it likes and never turns negative.
 *
 * When the liquid has gone one last point follows: the vapour thins out and keeps its composition.
 *
 * @param volume in equilibrium with `content`
 * @param steps of equal loss; twelve to 90 % keep 1e-5 of a mass fraction
 * @source Rayleigh 1902, eq. 2, with the vapour space added [rayleigh1902]
 */
export function leakPath(
  volume: ClosedVolume,
  content: Float64Array,
  from: 'vapour' | 'liquid',
  lost: number,
  steps: number,
): LeakPoint[] | undefined {
  const count = content.length
  const M = Float64Array.from(volume.model.components, (fluid) => fluid.molarMass_kg_mol)
  const mass = content.reduce((sum, n, i) => sum + n * M[i]!, 0)
  const lnN = content.map(Math.log)
  const amounts = new Float64Array(count)
  const k = [
    new Float64Array(count),
    new Float64Array(count),
    new Float64Array(count),
    new Float64Array(count),
  ] as const

  /** Equilibrium at ln N + by·slopes. */
  const settle = (slopes: Float64Array, by: number): boolean => {
    for (let i = 0; i < count; i++) amounts[i] = Math.exp(lnN[i]! + by * slopes[i]!)
    return solveClosedVolume(volume, amounts)
  }
  /** d(ln N_i)/d(lost) in the equilibrium just reached. */
  const slope = (out: Float64Array): void => {
    const offset = from === 'liquid' ? 0 : count
    let leaving = 0
    for (let i = 0; i < count; i++) leaving += M[i]! * Math.exp(volume.u[offset + i]!)
    for (let i = 0; i < count; i++) out[i] = (-mass * Math.exp(volume.u[offset + i]!)) / (leaving * amounts[i]!)
  }

  amounts.set(content)
  const points: LeakPoint[] = [pointOf(volume, 0, content)]
  const before = new Float64Array(volume.u.length)
  let done = 0
  let h = lost / steps
  while (done < lost - SMALLEST_STEP) {
    h = Math.min(h, lost - done)
    before.set(volume.u)
    slope(k[0])
    if (!settle(k[0], h / 2)) return undefined
    slope(k[1])
    if (!settle(k[1], h / 2)) return undefined
    slope(k[2])
    if (!settle(k[2], h)) return undefined
    slope(k[3])
    for (let i = 0; i < count; i++) k[0][i] = (k[0][i]! + 2 * k[1][i]! + 2 * k[2][i]! + k[3][i]!) / 6
    if (!settle(k[0], h)) return undefined
    const share = volume.u[2 * count]!
    const shareBefore = before[2 * count]!
    if (share < 0 && h > SMALLEST_STEP) {
      // The liquid goes within this step: go again, by as much as a straight line says, a little short of it.
      h = Math.max(SMALLEST_STEP, (SHORT_OF * h * shareBefore) / (shareBefore - share))
      volume.u.set(before)
      for (let i = 0; i < count; i++) amounts[i] = Math.exp(lnN[i]!)
      continue
    }
    for (let i = 0; i < count; i++) lnN[i] = Math.log(amounts[i]!)
    done += h
    points.push(pointOf(volume, done, amounts))
    if (share < LIQUID_GONE) {
      points.push(thinned(volume, points.at(-1)!, lost))
      break
    }
  }
  return points
}

const SMALLEST_STEP = 1e-6
const SHORT_OF = 0.999
/** Liquid's share of the volume that counts as none. */
const LIQUID_GONE = 1e-5

/** The equilibrium just reached. */
export function pointOf(
  { model, temperature, u, vapour }: ClosedVolume,
  lost: number,
  content: Float64Array,
): LeakPoint {
  const count = content.length
  vapour.partial.set(u.subarray(count, 2 * count).map(Math.exp))
  evaluatePhase(model, vapour, temperature, false)
  const share = u[2 * count]!
  return {
    lost,
    content: content.slice(),
    liquidShare: share < LIQUID_GONE ? 0 : share,
    liquid: u.subarray(0, count).map(Math.exp),
    vapour: vapour.partial.slice(),
    pressure_Pa: vapour.P * model.gasConstant_J_molK * temperature,
  }
}

/** Vapour alone, of which more has gone. */
function thinned({ model, temperature, vapour }: ClosedVolume, last: LeakPoint, lost: number): LeakPoint {
  const left = (1 - lost) / (1 - last.lost)
  vapour.partial.set(last.vapour.map((rho) => left * rho))
  evaluatePhase(model, vapour, temperature, false)
  const pressure_Pa = vapour.P * model.gasConstant_J_molK * temperature
  const content = last.content.map((n) => left * n)
  return { ...last, lost, content, vapour: vapour.partial.slice(), pressure_Pa }
}
