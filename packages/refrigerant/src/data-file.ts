/** The shapes of the files in `data/`. Arrays in one record run in step: entry k of each belongs to term k. */

/** An equation of state as published, with the citation key under which `data/sources.bib` knows it. */
export interface FluidFile {
  readonly name: string
  readonly aliases: readonly string[]
  readonly citation: string
  readonly molarMass_kg_mol: number
  /** The gas constant of the paper's own time; the equation is only right with it. */
  readonly gasConstant_J_molK: number
  readonly reducing: StatePoint
  /** Critical point of the equation itself, which can differ from the measured one that the paper prints. */
  readonly critical: StatePoint
  /** The printed critical point, where it is not the reducing point. */
  readonly printedCritical?: StatePoint
  readonly range: {
    readonly minTemperature_K: number
    readonly maxTemperature_K: number
    readonly maxPressure_Pa: number
  }
  readonly ideal: IdealPart
  readonly residual: ResidualPart
  readonly ancillary: {
    readonly pressure: Ancillary
    readonly liquidDensity: Ancillary
    readonly vapourDensity: Ancillary
  }
}

export interface StatePoint {
  readonly temperature_K: number
  readonly density_mol_m3: number
}

/** α⁰ = ln δ + c0 + c1·τ + lnTau·ln τ + Σ n·τ^t + Σ n·ln(1 − exp(−θ·τ)) */
export interface IdealPart {
  readonly c0: number
  readonly c1: number
  readonly lnTau: number
  readonly power: { readonly n: readonly number[]; readonly t: readonly number[] }
  readonly einstein: { readonly n: readonly number[]; readonly theta: readonly number[] }
  /** Added to c0 and c1: the reference state of a fluid that has no saturated liquid at 0 °C. */
  readonly offset?: { readonly c0: number; readonly c1: number }
}

/** The residual part αʳ(δ, τ), by kind of term. */
export interface ResidualPart {
  /** n·δ^d·τ^t·exp(−δ^l), without the exponential where l is 0 */
  readonly power?: Terms<'l'>
  /** n·δ^d·τ^t·exp(−g·δ^l) */
  readonly exponential?: Terms<'g' | 'l'>
  /** n·δ^d·τ^t·exp(−η(δ − ε)² − β(τ − γ)²) */
  readonly gaussian?: Terms<'eta' | 'epsilon' | 'beta' | 'gamma'>
  /** n·δ^d·τ^t·exp(−δ^l)·exp(−τ^m), each exponential only where its exponent is not 0 */
  readonly doubleExponential?: Terms<'l' | 'm'>
  /** n·δ^d·τ^t·exp(−η(δ − ε)²)·exp(1/(b + β(τ − γ)²)) */
  readonly gao?: Terms<'eta' | 'epsilon' | 'b' | 'beta' | 'gamma'>
  /** n·δ^d·τ^t·exp(−η(δ − ε)² − β(δ − γ)) */
  readonly gerg?: Terms<'eta' | 'epsilon' | 'beta' | 'gamma'>
  /** n·Δ^b·δ·ψ with Δ and ψ as in the carbon dioxide paper */
  readonly nonanalytic?: NonanalyticTerms
}

export type Terms<Extra extends string> = Readonly<Record<'n' | 'd' | 't' | Extra, readonly number[]>>

export type NonanalyticTerms = Readonly<Record<'n' | 'a' | 'b' | 'beta' | 'A' | 'B' | 'C' | 'D', readonly number[]>>

/**
 * A fit to the saturation line, good for a first guess: with θ = 1 − T/T_r and f = T_r/T or 1,
 * `exponential` is scale·exp(f·Σ n·θ^t) and `polynomial` is scale·(1 + Σ n·θ^t).
 */
export interface Ancillary {
  readonly form: string
  readonly inverseTau: boolean
  readonly temperature_K: number
  readonly scale: number
  readonly n: readonly number[]
  readonly t: readonly number[]
}

/** Mixing parameters, a row per pair in the order of `columns`; the betas belong to the order i, j. */
export interface PairFile {
  readonly citation: string
  readonly pairs: readonly PairRow[]
}

export type PairRow = readonly [
  i: string,
  j: string,
  betaT: number,
  gammaT: number,
  betaV: number,
  gammaV: number,
  F: number,
  departure: string | null,
]

export interface DepartureFile {
  readonly citation: string
  readonly departures: readonly (ResidualPart & { readonly name: string })[]
}

export interface BlendFile {
  readonly blends: readonly BlendRow[]
}

export interface BlendRow {
  readonly name: string
  readonly massPercent: Readonly<Record<string, number | undefined>>
  /** `false` where the composition was written from memory. */
  readonly confirmed?: boolean
}
