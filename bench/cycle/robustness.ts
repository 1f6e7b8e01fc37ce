import { type Device, solve } from '../../packages/cycle/src/index.ts'
import { seeded } from '../population/random.ts'
import { drawState } from './draw-state.ts'

const SEED = 7

/** Wide-range states of one device: how many solve or end in a named outcome, and how well their balances close. */
export function robustness(device: Device['kind'], count: number) {
  const random = seeded(SEED)
  let [steady, overfull, unsolved, notFinite, worstResidual] = [0, 0, 0, 0, 0]
  for (let i = 0; i < count; i++) {
    const { system, at, health } = drawState(device, random)
    const solution = solve(system, at, health)
    if (solution.kind === 'overfull') overfull++
    if (solution.kind === 'no-solution') unsolved++
    if (solution.kind !== 'steady') continue
    steady++
    if (!Object.values(solution.readings).every(Number.isFinite)) notFinite++
    worstResidual = Math.max(worstResidual, ...Object.values(solution.cycle.residuals).map(Math.abs))
  }
  return { device, count, steady, overfull, unsolved, share: (steady + overfull) / count, notFinite, worstResidual }
}
