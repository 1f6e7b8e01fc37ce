import { cholesky, dot, lnDeterminant, solved } from './gaussian.ts'

/** A linear-Gaussian prediction of everything that was read: values, and their slopes against the unknowns. */
export interface LinearModel {
  readonly values: Float64Array
  /** Row after row: one per reading, one column per unknown. */
  readonly slopes: Float64Array
  /** How severity and charge move the readings, and their spread within this point's cell. */
  readonly severity: Direction
  readonly charge: Direction
  /** How far this cause moves each reading from that of a sound, rightly charged system, times the share by which that may be wrong. */
  readonly doubt: Float64Array
}

export interface Direction {
  readonly slope: Float64Array
  readonly sd: number
}

/** What is known of the unknowns and the instruments before reading: the same for every cause. */
export interface Beforehand {
  readonly unknowns: number
  readonly mean: Float64Array
  /** Covariance of the unknowns, row after row. */
  readonly covariance: Float64Array
  /** Per unknown, those that it varies with. */
  readonly linked: readonly (readonly number[])[]
  /** Covariance of the rows that no unknown explains, row after row: instruments, and the twin from set to set. */
  readonly noise: Float64Array
  /** Correlation of what the twin gets wrong of a cause's effect, row after row; none between two observables. */
  readonly alike: Float64Array
  /** Directions in which one bad clamp may have moved readings. */
  readonly clamps: readonly Float64Array[]
}

export interface Evidence {
  /** Log density of the readings. */
  readonly ln: number
  /** Squared Mahalanobis distance of the readings with every clamp good. */
  readonly distance: number
  readonly residual: Float64Array
  /** S⁻¹ r: from it follows every conditional expectation. */
  readonly pull: Float64Array
  /** Lower triangle of S. */
  readonly triangle: Float64Array
  /** P Jᵀ: covariance of unknowns with readings, one row per unknown. */
  readonly cross: Float64Array
}

/** @param residualOf what is left of a reading after a prediction; a rule may censor it */
export function evidence(
  model: LinearModel,
  before: Beforehand,
  residualOf: (row: number, predicted: number) => number,
): Evidence | undefined {
  const n = model.values.length
  const k = before.unknowns
  const cross = new Float64Array(k * n)
  const residual = new Float64Array(n)
  for (let i = 0; i < n; i++) {
    let predicted = model.values[i]!
    const row = i * k
    for (let a = 0; a < k; a++) predicted += model.slopes[row + a]! * before.mean[a]!
    residual[i] = residualOf(i, predicted)
    for (let a = 0; a < k; a++) {
      let sum = 0
      for (const b of before.linked[a]!) sum += before.covariance[a * k + b]! * model.slopes[row + b]!
      cross[a * n + i] = sum
    }
  }
  const S = Float64Array.from(before.noise)
  const { severity, charge } = model
  for (let i = 0; i < n; i++) {
    for (let j = 0; j <= i; j++) {
      let sum = 0
      for (let a = 0; a < k; a++) sum += model.slopes[i * k + a]! * cross[a * n + j]!
      sum += severity.sd ** 2 * severity.slope[i]! * severity.slope[j]!
      sum += charge.sd ** 2 * charge.slope[i]! * charge.slope[j]!
      sum += before.alike[i * n + j]! * model.doubt[i]! * model.doubt[j]!
      S[i * n + j]! += sum
      if (i !== j) S[j * n + i] = S[i * n + j]!
    }
  }
  const triangle = cholesky(S, n)
  if (!triangle) return undefined
  const pull = solved(triangle, residual)
  const distance = dot(residual, pull)
  const good = -0.5 * (distance + lnDeterminant(triangle, n) + n * LN_2PI)
  return { ln: good + badClampGain(triangle, pull, before.clamps), distance, residual, pull, triangle, cross }
}

/**
 * By how much the log evidence grows when at most one clamp may have been bad: a mixture in which each is good but for a
 * small chance of an error several times its own. One rank-one update per clamp.
 */
function badClampGain(triangle: Float64Array, pull: Float64Array, clamps: readonly Float64Array[]): number {
  const terms = clamps.map((direction) => {
    const widened = 1 + BAD_CLAMP_SD_K ** 2 * dot(direction, solved(triangle, direction))
    const explained = (BAD_CLAMP_SD_K * dot(direction, pull)) ** 2 / widened
    return Math.log(BAD_CLAMP) + 0.5 * (explained - Math.log(widened))
  })
  return lnSum([Math.log(1 - BAD_CLAMP * clamps.length), ...terms])
}

/** ln Σ exp, without overflow. */
export function lnSum(terms: readonly number[]): number {
  const most = Math.max(...terms)
  return most === Number.NEGATIVE_INFINITY
    ? most
    : most + Math.log(terms.reduce((sum, t) => sum + Math.exp(t - most), 0))
}

/** Chance that a clamp sits badly, and how far off it is then: *common practice*. */
const BAD_CLAMP = 0.03
const BAD_CLAMP_SD_K = 4
const LN_2PI = Math.log(2 * Math.PI)
