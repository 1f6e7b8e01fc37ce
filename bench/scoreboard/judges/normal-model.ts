import { Matrix, solve } from 'ml-matrix'
import type { DeviceKind } from '../../population/case.ts'
import { quantile } from '../metrics/quantile.ts'
import type { Seen } from '../verdict.ts'
import { type Measured, measured } from './measured.ts'

export const FEATURES = [
  'evaporating',
  'superheat',
  'condensing',
  'subcooling',
  'discharge',
  'condenserAirRise',
  'supplyAirDrop',
] as const satisfies readonly (keyof Measured)[]

/** What sound systems of one device show in given weather, and how far each strays from that. */
export interface NormalModel {
  readonly refrigerants: readonly string[]
  /** In the order of FEATURES: one factor per regressor, and the standard deviation of what is left, K. */
  readonly features: readonly { readonly factors: readonly number[]; readonly sd: number }[]
  /** Mean squared deviation that one sound system in twenty exceeds. */
  readonly oddAbove: number
  readonly learntFrom: number
}

export type NormalModels = Readonly<Record<DeviceKind, NormalModel>>

/** Least squares of every feature over weather and nameplate, on systems known to be sound. */
export function learnNormal(sound: readonly Seen[]): NormalModel {
  const refrigerants = [...new Set(sound.map(({ plate }) => plate.refrigerant))].toSorted()
  const rows = sound.map((seen) => ({ x: regressors(seen, refrigerants), y: measured(seen) }))
  const features = FEATURES.map((feature) => {
    const known = rows.flatMap(({ x, y }) => (y[feature] === undefined ? [] : [{ x, y: y[feature] }]))
    const factors = leastSquares(known)
    const left = known.reduce((sum, { x, y }) => sum + (y - dot(factors, x)) ** 2, 0)
    return { factors, sd: Math.sqrt(left / (known.length - factors.length)) }
  })
  const model = { refrigerants, features, oddAbove: 0, learntFrom: sound.length }
  const odd = sound.map((seen) => meanSquare(deviations(model, seen)))
  return { ...model, oddAbove: quantile(odd, 0.95)?.value ?? Number.NaN }
}

/** Deviations from normal over their standard deviation, in the order of FEATURES; undefined where not read. */
export function deviations(model: NormalModel, seen: Seen): readonly (number | undefined)[] {
  const x = regressors(seen, model.refrigerants)
  const y = measured(seen)
  return FEATURES.map((feature, i) => {
    const { factors, sd } = model.features[i]!
    return y[feature] === undefined ? undefined : (y[feature] - dot(factors, x)) / sd
  })
}

export function meanSquare(z: readonly (number | undefined)[]): number {
  const known = z.filter((each) => each !== undefined)
  return known.reduce((sum, each) => sum + each * each, 0) / known.length
}

/** Near the weather of the rating point, so that the factors stay readable. */
function regressors({ plate, readings }: Seen, refrigerants: readonly string[]): readonly number[] {
  return [
    readings.outdoor_K - 308.15,
    readings.returnWetBulb_K - 292.6,
    readings.returnAir_K - 299.8,
    plate.cop - 3,
    (plate.subcooling_K ?? 0) - (plate.subcooling_K === undefined ? 0 : 5),
    ...refrigerants.map((each) => (each === plate.refrigerant ? 1 : 0)),
  ]
}

/** A trace of ridge keeps a regressor that never varies, as the subcooling of fixed devices, at zero. */
const RIDGE = 1e-6

function leastSquares(rows: readonly { readonly x: readonly number[]; readonly y: number }[]): number[] {
  const X = new Matrix(rows.map(({ x }) => [...x]))
  const y = Matrix.columnVector(rows.map((row) => row.y))
  const normal = X.transpose().mmul(X)
  return solve(normal.add(Matrix.eye(normal.rows).mul(RIDGE)), X.transpose().mmul(y)).to1DArray()
}

const dot = (a: readonly number[], b: readonly number[]): number => a.reduce((sum, ai, i) => sum + ai * b[i]!, 0)
