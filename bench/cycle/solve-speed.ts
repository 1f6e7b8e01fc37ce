import { type Device, solve } from '../../packages/cycle/src/index.ts'
import { seeded } from '../population/random.ts'
import { drawState } from './draw-state.ts'
import { milliseconds } from './time.ts'

const STATES = 400
const WARM_UP = 5
const ROUNDS = 9

/** Solving wide-range states of one device from no start, each the fastest of a few. */
export function solveSpeed(device: Device['kind'], yardstick_ms: number) {
  const random = seeded(11)
  const states = Array.from({ length: STATES }, () => drawState(device, random))
  for (let k = 0; k < WARM_UP; k++) for (const { system, at, health } of states) solve(system, at, health)
  const times = states.map(({ system, at, health }) => milliseconds(() => solve(system, at, health), ROUNDS))
  const iterations = states.map(({ system, at, health }) => solve(system, at, health).iterations)
  const median_ms = quantile(times, 0.5)
  return {
    device,
    median_ms,
    p90_ms: quantile(times, 0.9),
    p99_ms: quantile(times, 0.99),
    worst_ms: Math.max(...times),
    medianOver: median_ms / yardstick_ms,
    medianIterations: quantile(iterations, 0.5),
    p99Iterations: quantile(iterations, 0.99),
  }
}

function quantile(values: readonly number[], share: number): number {
  const sorted = values.toSorted((a, b) => a - b)
  return sorted[Math.min(Math.floor(share * sorted.length), sorted.length - 1)]!
}
