import type { CriticalPoint } from '../src/equilibrium/critical-point.ts'
import { solveLinear } from '../src/equilibrium/solve-linear.ts'
import type { MixtureModel } from '../src/mixture/mixture-model.ts'
import { evaluatePhase, type Phase, phaseOf } from '../src/mixture/phase.ts'
import type { Refrigerant } from '../src/refrigerant.ts'

const ITERATIONS = 30
const DIFFERENCE = 1e-4
const CONVERGED = 1e-9

/**
 * The critical point of a blend from the stability of its one phase: the smallest eigenvalue of the second derivatives
 * of the Helmholtz energy by the amounts vanishes, and so does its slope along its own eigenvector. It knows nothing of
 * bubble and dew points; the traced lines only say in which neighbourhood to look.
 *
 * @source R. A. Heidemann, A. M. Khalil, The calculation of critical points, AIChE Journal 26 (1980) 769–779
 * (REMEMBERED): the two conditions. Slopes are differences here, and Newton's method runs in ln T and ln ρ.
 */
export function criticalByStability({ engine, critical }: Refrigerant): CriticalPoint | undefined {
  const { model, moleFractions, bubble, dew } = engine
  const count = moleFractions.length
  const phase = phaseOf(model)
  const fill = (lnRho: number) => moleFractions.map((x) => x * Math.exp(lnRho))
  const conditions = (lnT: number, lnRho: number) => stability(model, phase, fill(lnRho), Math.exp(lnT))
  let lnT = Math.log(critical.temperature_K)
  let lnRho = (bubble.nodes.at(-1)!.u[count]! + dew.nodes.at(-1)!.u[count]!) / 2
  for (let k = 0; k < ITERATIONS; k++) {
    const [f, g] = conditions(lnT, lnRho)
    const [fHot, gHot] = conditions(lnT + DIFFERENCE, lnRho)
    const [fCold, gCold] = conditions(lnT - DIFFERENCE, lnRho)
    const [fDense, gDense] = conditions(lnT, lnRho + DIFFERENCE)
    const [fThin, gThin] = conditions(lnT, lnRho - DIFFERENCE)
    const slopes = Float64Array.of(fHot - fCold, fDense - fThin, gHot - gCold, gDense - gThin)
    const step = Float64Array.of(-f, -g).map((residual) => residual * 2 * DIFFERENCE)
    if (!solveLinear(slopes, step, 2, 2)) return undefined
    lnT += step[0]!
    lnRho += step[1]!
    if (Math.hypot(...step) < CONVERGED) {
      const temperature_K = Math.exp(lnT)
      phase.partial.set(fill(lnRho))
      evaluatePhase(model, phase, temperature_K, false)
      return { temperature_K, pressure_Pa: phase.P * model.gasConstant_J_molK * temperature_K }
    }
  }
  return undefined
}

/** The smallest eigenvalue at these partial densities, and its slope along its eigenvector. */
function stability(model: MixtureModel, phase: Phase, partial: Float64Array, T: number): readonly [number, number] {
  const { value, vector } = smallestEigenvalue(model, phase, partial, T)
  const root = Math.sqrt(partial.reduce((sum, rho) => sum + rho, 0))
  const moved = (s: number) => partial.map((rho, i) => rho + s * root * vector[i]! * Math.sqrt(rho))
  const ahead = smallestEigenvalue(model, phase, moved(DIFFERENCE), T).value
  const behind = smallestEigenvalue(model, phase, moved(-DIFFERENCE), T).value
  return [value, (ahead - behind) / (2 * DIFFERENCE)]
}

/** Of the symmetric √(ρ_i·ρ_j)·∂ ln f_i/∂ρ_j, by inverse iteration: near a critical point all others are far from 0. */
function smallestEigenvalue(model: MixtureModel, phase: Phase, partial: Float64Array, T: number) {
  const n = partial.length
  phase.partial.set(partial)
  evaluatePhase(model, phase, T, true)
  const matrix = phase.lnF_partial.map(
    (slope, at) => slope * Math.sqrt(partial[Math.trunc(at / n)]! / partial[at % n]!),
  )
  let vector = Float64Array.from({ length: n }, (_, i) => 1 / (i + 1))
  let value = Number.NaN
  for (let k = 0; k < ITERATIONS; k++) {
    const next = vector.slice()
    if (!solveLinear(matrix.slice(), next, n, n)) break
    const length = Math.hypot(...next)
    value = vector.reduce((sum, v, i) => sum + v * next[i]!, 0) / length ** 2
    vector = next.map((v) => (v * Math.sign(next[0]!)) / length)
  }
  return { value, vector }
}
