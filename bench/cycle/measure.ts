/** Everything measured in one warm process. Prints JSON. */
import { DEVICES } from './draw-state.ts'
import { dualCost } from './dual-cost.ts'
import { robustness } from './robustness.ts'
import { slopeCost } from './slope-cost.ts'
import { solveSpeed } from './solve-speed.ts'
import { tableSpeed } from './table-speed.ts'
import { targetGrid } from './target-grid.ts'
import { milliseconds } from './time.ts'
import { useSpeed } from './use-speed.ts'

export interface Measured {
  readonly yardstick_ms: number
  readonly solving: readonly ReturnType<typeof solveSpeed>[]
  readonly uses: ReturnType<typeof useSpeed>
  readonly dualOverPlain: number
  readonly slopes: readonly ReturnType<typeof slopeCost>[]
  readonly tables: readonly ReturnType<typeof tableSpeed>[]
  readonly robustness: readonly ReturnType<typeof robustness>[]
  readonly targets: readonly ReturnType<typeof targetGrid>[]
}

/** A fixed piece of arithmetic: ratios to it carry over to other machines, milliseconds do not. */
function arithmetic(): number {
  let sum = 0
  for (let i = 0; i < 1e6; i++) sum += Math.sqrt(i)
  return sum
}

const count = Number(process.argv[2] ?? 2000)
const yardstick_ms = milliseconds(arithmetic, 50)
const measured: Measured = {
  yardstick_ms,
  solving: DEVICES.map((device) => solveSpeed(device, yardstick_ms)),
  uses: useSpeed(yardstick_ms),
  dualOverPlain: dualCost(),
  slopes: DEVICES.map(slopeCost),
  tables: ['R-22', 'R-410A'].map(tableSpeed),
  robustness: DEVICES.map((device) => robustness(device, count)),
  targets: [targetGrid('R-22', 2.8, 'reciprocating'), targetGrid('R-410A', 3.3, 'scroll')],
}
console.log(JSON.stringify(measured))
