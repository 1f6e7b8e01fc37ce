import { solveLinear } from '../equilibrium/solve-linear.ts'
import type { MixtureModel } from '../mixture/mixture-model.ts'
import { evaluatePhase, type Phase, phaseOf } from '../mixture/phase.ts'

/**
 * Liquid and vapour at rest in a closed volume of known temperature: what is in the volume is known, how it divides is
 * not. Unknowns are u = (ln ρ_i of the liquid, ln ρ_i of the vapour, the liquid's share of the volume); equations are
 * equal fugacities, equal pressure, and the content of the volume, component by component.
 */
export interface ClosedVolume {
  readonly model: MixtureModel
  readonly temperature: number
  readonly liquid: Phase
  readonly vapour: Phase
  readonly u: Float64Array
  readonly J: Float64Array
  readonly step: Float64Array
}

const MAX_ITERATIONS = 25
/** Newton converges quadratically: a step of this size leaves an error of its square. */
const LAST_STEP = 1e-5
const MAX_STEP = 0.3

export function closedVolume(model: MixtureModel, temperature: number): ClosedVolume {
  const size = 2 * model.components.length + 1
  return {
    model,
    temperature,
    liquid: phaseOf(model),
    vapour: phaseOf(model),
    u: new Float64Array(size),
    J: new Float64Array(size * size),
    step: new Float64Array(size),
  }
}

/**
 * Newton from the values in `u`, which a leak leaves near the next solution. The liquid's share may come out negative:
 * the liquid has then gone.
 *
 * @param content molar densities of the components over the whole volume, mol/m³
 */
export function solveClosedVolume(volume: ClosedVolume, content: Float64Array): boolean {
  const { u, J, step } = volume
  const size = u.length
  for (let k = 0; k < MAX_ITERATIONS; k++) {
    linearise(volume, content)
    if (!solveLinear(J, step, size, size)) return false
    let largest = 0
    for (let i = 0; i < size; i++) largest = Math.max(largest, Math.abs(step[i]!))
    if (!(largest < Number.POSITIVE_INFINITY)) return false
    const damping = largest > MAX_STEP ? MAX_STEP / largest : 1
    for (let i = 0; i < size; i++) u[i]! += damping * step[i]!
    if (largest < LAST_STEP) return true
  }
  return false
}

function linearise({ model, temperature, liquid, vapour, u, J, step }: ClosedVolume, content: Float64Array): void {
  const count = content.length
  const size = 2 * count + 1
  const share = u[2 * count]!
  for (let i = 0; i < count; i++) {
    liquid.partial[i] = Math.exp(u[i]!)
    vapour.partial[i] = Math.exp(u[count + i]!)
  }
  evaluatePhase(model, liquid, temperature, true)
  evaluatePhase(model, vapour, temperature, true)
  J.fill(0)
  const scale = 1 / vapour.density
  const pressureRow = count * size
  for (let i = 0; i < count; i++) {
    const row = i * size
    for (let j = 0; j < count; j++) {
      J[row + j] = liquid.lnF_partial[i * count + j]!
      J[row + count + j] = -vapour.lnF_partial[i * count + j]!
    }
    step[i] = vapour.lnF[i]! - liquid.lnF[i]!
    J[pressureRow + i] = scale * liquid.P_partial[i]!
    J[pressureRow + count + i] = -scale * vapour.P_partial[i]!

    const balance = (count + 1 + i) * size
    const inverse = 1 / content[i]!
    const l = liquid.partial[i]! * inverse
    const v = vapour.partial[i]! * inverse
    J[balance + i] = share * l
    J[balance + count + i] = (1 - share) * v
    J[balance + 2 * count] = l - v
    step[count + 1 + i] = 1 - share * l - (1 - share) * v
  }
  step[count] = scale * (vapour.P - liquid.P)
}
