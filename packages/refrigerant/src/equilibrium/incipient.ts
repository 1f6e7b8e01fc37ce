import type { MixtureModel } from '../mixture/mixture-model.ts'
import { evaluatePhase, type Phase, phaseOf } from '../mixture/phase.ts'
import { solveLinear } from './solve-linear.ts'

/**
 * A phase of given composition in equilibrium with the first trace of another: the bubble point when the given phase
 * is the liquid, the dew point when it is the vapour. Unknowns are u = (ln ρ_i of the incipient phase, ln ρ of the
 * given phase, ln T); equations are equal fugacities, equal pressure, and one specification. No density root is solved
 * inside, a pure fluid is the case of one component, and an azeotrope is nothing special.
 */
export interface Incipient {
  readonly model: MixtureModel
  readonly side: Side
  readonly z: Float64Array
  readonly given: Phase
  readonly other: Phase
  readonly u: Float64Array
  /** du/ds along the line, s being the quantity specified last; filled by `tangent`. */
  readonly du: Float64Array
  readonly J: Float64Array
  readonly step: Float64Array
  /** ∂ln p/∂u. */
  readonly pressureRow: Float64Array
  /** ln p, taken from the vapour because a liquid's is ill-defined. */
  lnP: number
}

export type Side = 'bubble' | 'dew'

/**
 * What is held fixed: ln T, ln p, or the spread S = ln ρ_given − ln ρ_incipient, which runs through zero at the
 * critical point and so parametrises the whole line.
 */
export type Specified = 'temperature' | 'pressure' | 'spread'

/** Newton converges quadratically: a step of this size leaves an error of its square. */
const LAST_STEP = 1e-5
const MAX_LN_DENSITY_STEP = 0.7
const MAX_LN_TEMPERATURE_STEP = 0.08

export function incipient(model: MixtureModel, moleFractions: Float64Array, side: Side): Incipient {
  const size = model.components.length + 2
  const given = phaseOf(model)
  const pure = model.components.length === 1
  return {
    model,
    side,
    z: moleFractions,
    given,
    other: pure ? phaseOf(model, given.scratch.bank) : phaseOf(model),
    u: new Float64Array(size),
    du: new Float64Array(size),
    J: new Float64Array(size * size),
    step: new Float64Array(size),
    pressureRow: new Float64Array(size),
    lnP: Number.NaN,
  }
}

/**
 * Newton from the values in `u`. Returns the number of iterations, or 0 when it did not converge; `u` is then
 * worthless. After success the two phases hold the last evaluation, which is one last step away from `u`.
 */
export function solveIncipient(w: Incipient, specified: Specified, value: number, maxIterations: number): number {
  const { u, step, J } = w
  const size = u.length
  for (let iteration = 1; iteration <= maxIterations; iteration++) {
    linearise(w, specified, value)
    if (!solveLinear(J, step, size, size)) return 0
    const damping = stepLength(step)
    if (!(damping > 0)) return 0
    for (let k = 0; k < size; k++) u[k]! += damping * step[k]!
    if (damping === 1 && largest(step) < LAST_STEP) {
      for (let k = 0; k < size; k++) w.lnP += w.pressureRow[k]! * step[k]!
      return iteration
    }
  }
  return 0
}

/** At a solution: fills du/ds for s = ln T, ln p or S and returns d(ln p)/ds, NaN when singular. */
export function tangent(w: Incipient, specified: Specified): number {
  const { u, step, J, pressureRow, du } = w
  const size = u.length
  linearise(w, specified, 0)
  step.fill(0)
  step[size - 1] = 1
  if (!solveLinear(J, step, size, size)) return Number.NaN
  let lnP = 0
  for (let k = 0; k < size; k++) {
    du[k] = step[k]!
    lnP += pressureRow[k]! * step[k]!
  }
  return lnP
}

/** Evaluates both phases at `u`; afterwards `J` is the Jacobian and `step` the negative residual. */
function linearise(w: Incipient, specified: Specified, value: number): void {
  const { model, z, given, other, u, J, step, pressureRow } = w
  const count = z.length
  const size = count + 2
  const lnT = u[count + 1]!
  const T = Math.exp(lnT)
  const density = Math.exp(u[count]!)
  for (let i = 0; i < count; i++) {
    other.partial[i] = Math.exp(u[i]!)
    given.partial[i] = density * z[i]!
  }
  evaluatePhase(model, given, T, false)
  evaluatePhase(model, other, T, true)

  for (let i = 0; i < count; i++) {
    const row = i * size
    for (let j = 0; j < count; j++) J[row + j] = other.lnF_partial[i * count + j]!
    J[row + count] = -given.lnF_density[i]!
    J[row + count + 1] = other.lnF_T[i]! - given.lnF_T[i]!
    step[i] = given.lnF[i]! - other.lnF[i]!
  }

  const vapour = w.side === 'bubble' ? other : given
  const scale = 1 / vapour.density
  const row = count * size
  for (let j = 0; j < count; j++) J[row + j] = scale * other.P_partial[j]!
  J[row + count] = -scale * given.P_density
  J[row + count + 1] = scale * (other.P_T - given.P_T)
  step[count] = scale * (given.P - other.P)

  const inverseP = 1 / vapour.P
  for (let j = 0; j < count; j++) pressureRow[j] = w.side === 'bubble' ? inverseP * other.P_partial[j]! : 0
  pressureRow[count] = w.side === 'bubble' ? 0 : inverseP * given.P_density
  pressureRow[count + 1] = 1 + inverseP * vapour.P_T
  w.lnP = Math.log(vapour.P * model.gasConstant_J_molK) + lnT

  const last = (count + 1) * size
  switch (specified) {
    case 'temperature':
      for (let j = 0; j <= count; j++) J[last + j] = 0
      J[last + count + 1] = 1
      step[count + 1] = value - lnT
      return
    case 'pressure':
      for (let j = 0; j < size; j++) J[last + j] = pressureRow[j]!
      step[count + 1] = value - w.lnP
      return
    case 'spread':
      for (let j = 0; j < count; j++) J[last + j] = -other.x[j]!
      J[last + count] = 1
      J[last + count + 1] = 0
      step[count + 1] = value - Math.log(density / other.density)
      return
  }
}

/** The fraction of a step that keeps every change within reach of the linearisation; NaN if the step is not finite. */
function stepLength(step: Float64Array): number {
  const last = step.length - 1
  let fraction = 1
  for (let k = 0; k <= last; k++) {
    const limit = k === last ? MAX_LN_TEMPERATURE_STEP : MAX_LN_DENSITY_STEP
    const size = Math.abs(step[k]!)
    if (!(size < Number.POSITIVE_INFINITY)) return Number.NaN
    if (size * fraction > limit) fraction = limit / size
  }
  return fraction
}

function largest(step: Float64Array): number {
  let size = 0
  for (let k = 0; k < step.length; k++) size = Math.max(size, Math.abs(step[k]!))
  return size
}
