import type { FluidFile } from '../data-file.ts'

/**
 * The ideal-gas part of one composition as a function of T: Σ x_i·(R_i/R)·α⁰_i + Σ x_i·ln x_i, multiplied out so that
 * one loop serves any number of components. The factor R_i/R keeps each component's heat capacity what its paper made
 * it; the terms ln ρ and ln x carry no such factor, because the pressure does not.
 */
export interface IdealGas {
  readonly constant: number
  /** Coefficient of 1/T. */
  readonly inverse: number
  /** Coefficient of ln τ. */
  readonly lnTau: number
  readonly powerN: Float64Array
  readonly powerT: Float64Array
  readonly einsteinN: Float64Array
  readonly einsteinTheta_K: Float64Array
}

/** α⁰ − ln ρ and its derivatives by T = τ∂/∂τ. */
export interface IdealValues {
  a: number
  aT: number
  aTT: number
}

/**
 * @param reducingOf the τ = 1, δ = 1 of each component's own equation. Some reference tables were made with the printed
 * critical point instead; a test passes that in to compare like with like.
 */
export function idealGas(
  fluids: readonly FluidFile[],
  x: Float64Array,
  gasConstant: number,
  reducingOf: (fluid: FluidFile) => FluidFile['reducing'] = (fluid) => fluid.reducing,
): IdealGas {
  let constant = 0
  let inverse = 0
  let lnTau = 0
  const power: [n: number, t: number][] = []
  const einstein: [n: number, theta: number][] = []
  for (const [i, fluid] of fluids.entries()) {
    const { ideal, gasConstant_J_molK } = fluid
    const { temperature_K, density_mol_m3 } = reducingOf(fluid)
    const xi = x[i]!
    const w = (xi * gasConstant_J_molK) / gasConstant
    constant += xi * Math.log(xi / density_mol_m3)
    constant += w * (ideal.c0 + (ideal.offset?.c0 ?? 0) + ideal.lnTau * Math.log(temperature_K))
    inverse += w * (ideal.c1 + (ideal.offset?.c1 ?? 0)) * temperature_K
    lnTau += w * ideal.lnTau
    for (const [k, n] of ideal.power.n.entries()) {
      power.push([w * n * temperature_K ** ideal.power.t[k]!, ideal.power.t[k]!])
    }
    for (const [k, n] of ideal.einstein.n.entries()) einstein.push([w * n, ideal.einstein.theta[k]! * temperature_K])
  }
  return {
    constant,
    inverse,
    lnTau,
    powerN: Float64Array.from(power, ([n]) => n),
    powerT: Float64Array.from(power, ([, t]) => t),
    einsteinN: Float64Array.from(einstein, ([n]) => n),
    einsteinTheta_K: Float64Array.from(einstein, ([, theta]) => theta),
  }
}

export function evaluateIdeal(gas: IdealGas, temperature: number, out: IdealValues): void {
  const lnT = Math.log(temperature)
  const { powerN, powerT, einsteinN, einsteinTheta_K } = gas
  let a = gas.constant + gas.inverse / temperature - gas.lnTau * lnT
  let aT = gas.inverse / temperature + gas.lnTau
  let aTT = gas.inverse / temperature
  for (let k = 0; k < powerN.length; k++) {
    const t = powerT[k]!
    const value = powerN[k]! * Math.exp(-t * lnT)
    a += value
    aT += t * value
    aTT += t * t * value
  }
  for (let k = 0; k < einsteinN.length; k++) {
    const n = einsteinN[k]!
    const u = einsteinTheta_K[k]! / temperature
    const e = Math.exp(-u)
    const occupied = (u * e) / (1 - e)
    a += n * Math.log1p(-e)
    aT += n * occupied
    aTT += n * occupied * (1 - u - occupied)
  }
  out.a = a
  out.aT = aT
  out.aTT = aTT
}
