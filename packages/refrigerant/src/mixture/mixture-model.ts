import type { FluidFile, PairRow, ResidualPart } from '../data-file.ts'
import { type TermTable, termTable, type WeightedParts } from '../helmholtz/term-table.ts'

/** The molar gas constant of mixtures; pure fluids keep the one their paper used. */
const GAS_CONSTANT_J_MOLK = 8.31446261815324

/**
 * The multi-fluid mixture model, compiled for these components in this order and for any composition:
 * αʳ(δ, τ, x) = Σ x_i·αʳ_i(δ, τ) + Σ_{i<j} x_i·x_j·F_ij·αʳ_ij(δ, τ), δ = ρ/ρ_r(x), τ = T_r(x)/T.
 *
 * @source Kunz and Wagner 2012, eqs. 9–12 and 16–17 [kunz2012]
 */
export interface MixtureModel {
  readonly components: readonly FluidFile[]
  readonly gasConstant_J_molK: number
  /** Functions 0 … N−1 are the components, then the departure functions. */
  readonly table: TermTable
  readonly departures: readonly Departure[]
  readonly reducing: Reducing
}

/** x_i·x_j·weight·αʳ_k, with k the index of the departure function in the table. */
export interface Departure {
  readonly i: number
  readonly j: number
  readonly weight: number
  readonly index: number
}

/**
 * Constants of the two reducing functions, both of the form
 * Y(x) = Σ x_i²·Y_i + Σ_{i<j} c_ij·x_i·x_j·(x_i + x_j)/(b_ij·x_i + x_j), b = β², c = 2βγ·Y_ij.
 */
export interface Reducing {
  readonly temperature: ReducingConstants
  readonly volume: ReducingConstants
}

export interface ReducingConstants {
  readonly pure: Float64Array
  readonly b: Float64Array
  readonly c: Float64Array
}

export interface PairData {
  readonly row: PairRow
  readonly departure: ResidualPart | undefined
}

/** `pairs` holds one entry for each i < j, in the order (0,1), (0,2), …, (1,2), …, each in the order i, j. */
export function mixtureModel(components: readonly FluidFile[], pairs: readonly PairData[]): MixtureModel {
  const functions: WeightedParts[] = components.map(({ residual }) => [{ weight: 1, part: residual }])
  const departures: Departure[] = []
  const known: (ResidualPart | undefined)[] = components.map(() => undefined)
  forEachPair(components.length, (i, j, k) => {
    const { row, departure } = pairs[k]!
    if (!departure || row[6] === 0) return
    if (!known.includes(departure)) {
      known.push(departure)
      functions.push([{ weight: 1, part: departure }])
    }
    departures.push({ i, j, weight: row[6], index: known.indexOf(departure) })
  })
  const temperatures = components.map((fluid) => fluid.reducing.temperature_K)
  const volumes = components.map((fluid) => 1 / fluid.reducing.density_mol_m3)
  return {
    components,
    gasConstant_J_molK: components.length === 1 ? components[0]!.gasConstant_J_molK : GAS_CONSTANT_J_MOLK,
    table: termTable(functions),
    departures,
    reducing: {
      temperature: reducingConstants(temperatures, (i, j) => Math.sqrt(temperatures[i]! * temperatures[j]!), pairs, 2),
      volume: reducingConstants(
        volumes,
        (i, j) => (Math.cbrt(volumes[i]!) + Math.cbrt(volumes[j]!)) ** 3 / 8,
        pairs,
        4,
      ),
    },
  }
}

export function forEachPair(count: number, visit: (i: number, j: number, k: number) => void): void {
  let k = 0
  for (let i = 0; i < count; i++) for (let j = i + 1; j < count; j++) visit(i, j, k++)
}

function reducingConstants(
  pure: readonly number[],
  combined: (i: number, j: number) => number,
  pairs: readonly PairData[],
  betaColumn: 2 | 4,
): ReducingConstants {
  const b = new Float64Array(pairs.length)
  const c = new Float64Array(pairs.length)
  forEachPair(pure.length, (i, j, k) => {
    const { row } = pairs[k]!
    const beta = row[betaColumn]
    const gamma = betaColumn === 2 ? row[3] : row[5]
    b[k] = beta * beta
    c[k] = 2 * beta * gamma * combined(i, j)
  })
  return { pure: Float64Array.from(pure), b, c }
}
