import { cycle } from '../../packages/cycle/src/cycle.ts'
import type { Device, Unknowns } from '../../packages/cycle/src/index.ts'
import { type Function3, newton, slopes, stepFrom, type Vector3 } from '../../packages/cycle/src/newton.ts'
import { seeded } from '../population/random.ts'
import { drawState } from './draw-state.ts'

const STATES = 400
const ENTHALPY_SCALE = 1e5
const CAP: Vector3 = [0.4, 0.4, 0.3]
const CLOSED = 1e-9

/**
 * What exact derivatives could save. From the rated state, where both ways start: passes around the circuit of the twin's
 * search, which takes slopes by differences and corrects them, and passes of one that has exact slopes at every step
 * (here by central differences, not counted). A pass that also gives its slopes pays off while it costs less than
 * `breakEven` plain ones; `dual-cost.ts` has what it does cost.
 */
export function slopeCost(device: Device['kind']) {
  const random = seeded(13)
  let [passes, steps, solved] = [0, 0, 0]
  const errors: number[] = []
  for (let i = 0; i < STATES; i++) {
    const { system, at, health } = drawState(device, random)
    let count = 0
    const f: Function3 = (x) => {
      count++
      const { flow, evaporatorOutlet, charge } = cycle(system, at, health, unscaled(x)).residuals
      return [flow, evaporatorOutlet, charge]
    }
    const { unknowns } = system.rated
    const start: Vector3 = [unknowns.lnSuction, unknowns.lnCondensing, unknowns.suctionEnthalpy_J_kg / ENTHALPY_SCALE]
    const found = newton(f, start, CAP)
    const taken = count
    const exact = exactSteps(f, start)
    if (!found.converged || exact === undefined) continue
    solved++
    passes += taken
    steps += exact
    errors.push(slopeError(f, found.x, found.residual))
  }
  return {
    device,
    solvedByBoth: solved / STATES,
    passes: passes / solved,
    exactSteps: steps / solved,
    breakEven: passes / steps,
    // The few states right at a corner, where the two sides differ, left aside.
    slopeError: errors.toSorted((a, b) => a - b)[Math.floor(0.98 * solved)]!,
  }
}

/** Newton's method with exact slopes, capped and backtracked alike; plain passes of its line search counted as steps. */
function exactSteps(f: Function3, start: Vector3): number | undefined {
  let [x, r, count] = [start, f(start), 1]
  for (let i = 0; i < 40; i++) {
    if (largest(r) < CLOSED) return count
    const step = stepFrom(central(f, x), r)
    let share = 1 / Math.max(1, ...step.map((s, k) => Math.abs(s) / CAP[k]!))
    for (let halvings = 0; ; halvings++, share /= 2) {
      if (halvings > 8) return undefined
      const trial: Vector3 = [x[0] + share * step[0], x[1] + share * step[1], x[2] + share * step[2]]
      const there = f(trial)
      count++
      if (squares(there) < squares(r)) {
        ;[x, r] = [trial, there]
        break
      }
    }
  }
  return undefined
}

/** Columns by central differences. */
function central(f: Function3, x: Vector3, d = 1e-5): [Vector3, Vector3, Vector3] {
  const column = (k: number): Vector3 => {
    const moved = (by: number) => f(x.map((value, i) => (i === k ? value + by : value)) as unknown as Vector3)
    const [ahead, behind] = [moved(d), moved(-d)]
    return ahead.map((value, i) => (value - behind[i]!) / (2 * d)) as unknown as Vector3
  }
  return [column(0), column(1), column(2)]
}

/** Of the slopes that the twin takes, at a solution, over the greatest of their column. */
function slopeError(f: Function3, x: Vector3, r: Vector3): number {
  const [taken, exact] = [slopes(f, x, r), central(f, x)]
  return Math.max(
    ...taken.map(
      (column, k) => largest(column.map((v, i) => v - exact[k]![i]!) as unknown as Vector3) / largest(exact[k]!),
    ),
  )
}

const largest = (r: Vector3) => Math.max(Math.abs(r[0]), Math.abs(r[1]), Math.abs(r[2]))
const squares = (r: Vector3) => r[0] * r[0] + r[1] * r[1] + r[2] * r[2]
const unscaled = ([lnSuction, lnCondensing, h]: Vector3): Unknowns => ({
  lnSuction,
  lnCondensing,
  suctionEnthalpy_J_kg: h * ENTHALPY_SCALE,
})
