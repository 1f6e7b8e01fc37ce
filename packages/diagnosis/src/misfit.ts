import type { Misfit } from './diagnosis.ts'
import { chiSquareAbove } from './normal.ts'
import type { WeighedPoint } from './weigh.ts'

/** How badly the point that explains the readings best explains them. */
export function misfitOf(points: readonly WeighedPoint[]): Misfit {
  const best = points.reduce((a, b) => (b.lnWeight > a.lnWeight ? b : a))
  const { distance, residual } = best.evidence
  const degrees = residual.length
  const chance = chiSquareAbove(distance, degrees)
  return { distance, degrees, chance, unexplained: chance < UNEXPLAINED }
}

/** One system in a thousand that we do know reads so strangely: own choice. */
const UNEXPLAINED = 1e-3
