import { solve } from '../../packages/cycle/src/index.ts'
import { seeded } from '../population/random.ts'
import { DEVICES, drawState } from './draw-state.ts'

/** Wide-range states per device: how many solve, and how well their balances close. The full run: `npx tsx bench/cycle/robustness.ts 20000` */
const count = Number(process.argv[2] ?? 2000)
const SEED = 7

for (const device of DEVICES) {
  const random = seeded(SEED)
  let [steady, overfull, notFinite, refused, worst] = [0, 0, 0, 0, 0]
  const open: Record<string, number> = {}
  const outcomes: Record<string, number> = {}
  for (let i = 0; i < count; i++) {
    const state = drawState(device, random)
    refused += state.refused
    const solution = solve(state.system, state.at, state.health)
    if (solution.kind === 'overfull') {
      overfull++
      continue
    }
    if (solution.kind === 'no-solution') {
      open[solution.open] = (open[solution.open] ?? 0) + 1
      continue
    }
    steady++
    if (!Object.values(solution.readings).every(Number.isFinite)) notFinite++
    for (const { kind } of solution.outcomes) outcomes[kind] = (outcomes[kind] ?? 0) + 1
    worst = Math.max(worst, ...Object.values(solution.cycle.residuals).map(Math.abs))
  }
  console.log(
    `${device}: of ${count} ${steady} steady and ${overfull} overfull (${((100 * (steady + overfull)) / count).toFixed(3)} %), no solution ${JSON.stringify(open)}, ` +
      `not finite ${notFinite}, worst scaled residual ${worst.toExponential(1)}, nameplates refused on the way ${refused}`,
  )
  console.log(`  ${JSON.stringify(outcomes)}`)
}
