import { solveLine } from '../../packages/refrigerant/src/equilibrium/saturation-line.ts'
import type { Refrigerant } from '../../packages/refrigerant/src/index.ts'
import { closedVolume, solveClosedVolume } from '../../packages/refrigerant/src/leak/closed-volume.ts'
import { leakPath } from '../../packages/refrigerant/src/leak/leak-path.ts'
import { milliseconds } from './time.ts'

const AT_K = 298.15
const LIQUID_SHARE = 0.3
const LOST = 0.9
const STEPS = 12

/** The path alone: composition and pressure of a leak to 90 %, from a filled volume. */
export function leakPathMilliseconds({ engine }: Refrigerant): number {
  const { model, bubble, moleFractions } = engine
  const count = moleFractions.length
  if (!solveLine(bubble, 'temperature', Math.log(AT_K))) return Number.NaN
  const u = bubble.work.u.slice()
  const content = moleFractions.map((x) => x * LIQUID_SHARE * Math.exp(u[count]!))
  return milliseconds(() => {
    const volume = closedVolume(model, AT_K)
    for (let i = 0; i < count; i++) {
      volume.u[i] = u[count]! + Math.log(moleFractions[i]!)
      volume.u[count + i] = u[i]!
    }
    volume.u[2 * count] = LIQUID_SHARE
    solveClosedVolume(volume, content)
    leakPath(volume, content, 'vapour', LOST, STEPS)
  }, 200)
}
