import type { MixtureModel } from '../mixture/mixture-model.ts'
import { evaluatePhase, type Phase, phaseOf } from '../mixture/phase.ts'
import { solveLinear } from './solve-linear.ts'

/**
 * Liquid and vapour of a blend side by side at a given pressure, with either the vapour's share of the mass or the
 * temperature fixed. Unknowns are u = (ln ρ_i of the liquid, ln ρ_i of the vapour, ln T, quality); equations are equal
 * fugacities, the pressure of each phase, the mass balance, and the specification.
 */
export interface Split {
  readonly model: MixtureModel
  readonly massFraction: Float64Array
  readonly liquid: Phase
  readonly vapour: Phase
  readonly u: Float64Array
  readonly J: Float64Array
  readonly step: Float64Array
  readonly liquidMass: Float64Array
  readonly vapourMass: Float64Array
}

/** Newton converges quadratically: a step of this size leaves an error of its square. */
const LAST_STEP = 1e-5
const MAX_LN_DENSITY_STEP = 0.5
const MAX_LN_TEMPERATURE_STEP = 0.05
const MAX_QUALITY_STEP = 0.3

export function split(model: MixtureModel, massFraction: Float64Array): Split {
  const count = massFraction.length
  const size = 2 * count + 2
  return {
    model,
    massFraction,
    liquid: phaseOf(model),
    vapour: phaseOf(model),
    u: new Float64Array(size),
    J: new Float64Array(size * size),
    step: new Float64Array(size),
    liquidMass: new Float64Array(count),
    vapourMass: new Float64Array(count),
  }
}

/** Newton from the values in `u`; false when it did not converge. The phases end up evaluated at the solution. */
export function solveSplit(
  s: Split,
  pressure: number,
  specified: 'temperature' | 'quality',
  value: number,
  maxIterations: number,
): boolean {
  const { u, J, step } = s
  const size = u.length
  for (let iteration = 0; iteration < maxIterations; iteration++) {
    linearise(s, pressure, specified, value)
    if (!solveLinear(J, step, size, size)) return false
    const damping = stepLength(step)
    if (!(damping > 0)) return false
    let largest = 0
    for (let k = 0; k < size; k++) {
      u[k]! += damping * step[k]!
      largest = Math.max(largest, Math.abs(step[k]!))
    }
    if (largest < LAST_STEP) {
      linearise(s, pressure, specified, value)
      return true
    }
  }
  return false
}

function linearise(s: Split, pressure: number, specified: 'temperature' | 'quality', value: number): void {
  const { model, liquid, vapour, u, J, step } = s
  const count = s.massFraction.length
  const size = 2 * count + 2
  const columnT = 2 * count
  const columnQ = columnT + 1
  const lnT = u[columnT]!
  const T = Math.exp(lnT)
  for (let i = 0; i < count; i++) {
    liquid.partial[i] = Math.exp(u[i]!)
    vapour.partial[i] = Math.exp(u[count + i]!)
  }
  evaluatePhase(model, liquid, T, true)
  evaluatePhase(model, vapour, T, true)
  J.fill(0)

  for (let i = 0; i < count; i++) {
    const row = i * size
    for (let j = 0; j < count; j++) {
      J[row + j] = -liquid.lnF_partial[i * count + j]!
      J[row + count + j] = vapour.lnF_partial[i * count + j]!
    }
    J[row + columnT] = vapour.lnF_T[i]! - liquid.lnF_T[i]!
    step[i] = liquid.lnF[i]! - vapour.lnF[i]!
  }

  const P = pressure / (model.gasConstant_J_molK * T)
  pressureRow(s, liquid, count, 0, 1 / P)
  pressureRow(s, vapour, count + 1, count, 1 / P)

  massFractions(model, liquid, s.liquidMass)
  massFractions(model, vapour, s.vapourMass)
  const q = u[columnQ]!
  for (let i = 0; i < count - 1; i++) {
    const row = (count + 2 + i) * size
    const L = s.liquidMass[i]!
    const V = s.vapourMass[i]!
    const scale = 1 / s.massFraction[i]!
    for (let j = 0; j < count; j++) {
      J[row + j] = scale * (1 - q) * L * ((i === j ? 1 : 0) - s.liquidMass[j]!)
      J[row + count + j] = scale * q * V * ((i === j ? 1 : 0) - s.vapourMass[j]!)
    }
    J[row + columnQ] = scale * (V - L)
    step[count + 2 + i] = 1 - scale * ((1 - q) * L + q * V)
  }

  const last = (size - 1) * size
  J[last + (specified === 'temperature' ? columnT : columnQ)] = 1
  step[size - 1] = value - (specified === 'temperature' ? lnT : q)
}

/** p/RT of one phase against the given one, relative to it. */
function pressureRow({ J, step, liquid }: Split, phase: Phase, equation: number, column: number, scale: number): void {
  const count = liquid.x.length
  const row = equation * step.length
  for (let j = 0; j < count; j++) J[row + column + j] = scale * phase.P_partial[j]!
  J[row + 2 * count] = scale * (phase.P + phase.P_T)
  step[equation] = 1 - scale * phase.P
}

function massFractions(model: MixtureModel, phase: Phase, out: Float64Array): void {
  let total = 0
  for (let i = 0; i < out.length; i++) {
    out[i] = phase.partial[i]! * model.components[i]!.molarMass_kg_mol
    total += out[i]!
  }
  for (let i = 0; i < out.length; i++) out[i]! /= total
}

function stepLength(step: Float64Array): number {
  const last = step.length - 1
  let fraction = 1
  for (let k = 0; k <= last; k++) {
    const limit = k === last ? MAX_QUALITY_STEP : k === last - 1 ? MAX_LN_TEMPERATURE_STEP : MAX_LN_DENSITY_STEP
    const size = Math.abs(step[k]!)
    if (!(size < Number.POSITIVE_INFINITY)) return Number.NaN
    if (size * fraction > limit) fraction = limit / size
  }
  return fraction
}
