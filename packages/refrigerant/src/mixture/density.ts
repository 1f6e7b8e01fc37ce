import { evaluatePressure, type FixedComposition, type PressureAt } from './fixed-composition.ts'

const MAX_ITERATIONS = 80
/** A last step of this relative size leaves an error of its square. */
const LAST_STEP = 3e-6
/** The densest liquids lie near 3.5 of the reducing density. */
const DENSEST = 4.5
/** ∂ln p/∂ln ρ: 1 for the ideal gas, 10 and more for a liquid. */
const GAS_STIFFNESS = 2.5

const at: PressureAt = { p: 0, dp: 0 }

/**
 * The density at which the equation gives this pressure, on the branch between two densities; NaN if there is none.
 * Newton in ln ρ, kept inside a bracket that shrinks with every evaluation, so that a false root outside the branch
 * cannot be reached and a flat place near the critical point only costs bisections.
 *
 * @param start molar density of the first evaluation, between `low` and `high`, mol/m³
 */
export function densityBetween(
  fluid: FixedComposition,
  temperature: number,
  pressure: number,
  start: number,
  low: number,
  high: number,
): number {
  let lowest = low
  let highest = Math.min(high, DENSEST * fluid.reducingDensity_mol_m3)
  let density = Math.min(Math.max(start, lowest), highest)
  for (let k = 0; k < MAX_ITERATIONS; k++) {
    evaluatePressure(fluid, temperature, density, at)
    if (at.p < pressure) lowest = density
    else highest = density
    // A gas is nearly straight in ln p against ln ρ, a liquid in p against ln ρ.
    const gasLike = at.dp < GAS_STIFFNESS * at.p
    const step = gasLike ? (at.p / at.dp) * Math.log(pressure / at.p) : (pressure - at.p) / at.dp
    const next = density * Math.exp(step)
    if (at.dp > 0 && Math.abs(step) < LAST_STEP) return next
    const inside = at.dp > 0 && next > lowest && next < highest
    density = inside ? next : lowest > 0 ? Math.sqrt(lowest * highest) : highest / 2
  }
  return Number.NaN
}
