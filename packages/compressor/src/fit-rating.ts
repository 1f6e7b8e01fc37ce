import { fail, ok, outOfRange, type Problem, type Result } from '@chargewright/quantity'
import { Matrix, SingularValueDecomposition } from 'ml-matrix'
import { type DewUnit, fromKelvin } from './dew-unit.ts'
import { type RatedQuantity, siPerUnit } from './rated-quantity.ts'
import { type RatingPolynomial, TERMS } from './rating-polynomial.ts'
import { convexRegion, type DewPair } from './region.ts'

/** A point read off a maker's table or curve; the value in the unit of the table. */
export interface RatingPoint extends DewPair {
  readonly value: number
}

export interface RatingFit {
  readonly polynomial: RatingPolynomial
  /** The point that fits worst to the others, and how far it lies from what they say, in the unit of the table. */
  readonly worst?: { readonly index: number; readonly off: number }
}

/**
 * Ten coefficients from a table of points, by least squares; usable in the convex region of the points.
 *
 * @param points ten or more, with at least four suction and four discharge temperatures among them, else a cubic cannot
 *   be told; dew temperatures −80 °C to 100 °C, discharge above suction; values above 0
 * @returns the polynomial; with eleven points or more also its scatter and the worst point; else the problem with a
 *   point, or `missing` when the points do not determine ten coefficients
 * @source least squares through the singular value decomposition, on temperatures scaled to −1 … 1: Golub & Van Loan,
 *   Matrix Computations, 5.5; deviation of a point from a fit without it: Cook & Weisberg 1982, 2.2
 * @accuracy reproduces the polynomial behind a table without noise to 10⁻⁹ of its value (test beside this file)
 */
export function fitRating(
  what: RatedQuantity,
  unit: string,
  dewUnit: DewUnit,
  points: readonly RatingPoint[],
): Result<RatingFit, Problem> {
  const perUnit = siPerUnit(what, unit)
  if (perUnit === undefined)
    return fail({ kind: 'unknown', field: `unit of the ${what}`, value: unit, accepted: 'a unit of it' })
  const problem = problemWith(points)
  if (problem) return fail(problem)
  const region = convexRegion(points)
  if (!region.ok) return region

  const S = scaled(points.map((p) => fromKelvin(p.suctionDew_K, dewUnit)))
  const D = scaled(points.map((p) => fromKelvin(p.dischargeDew_K, dewUnit)))
  const design = new Matrix(points.map((_, row) => TERMS.map(([i, j]) => S.values[row]! ** i * D.values[row]! ** j)))
  const svd = new SingularValueDecomposition(design)
  const [largest = 0, smallest = 0] = [Math.max(...svd.diagonal), Math.min(...svd.diagonal)]
  if (!(smallest > RANK * largest)) return fail(undetermined(points.length))
  const solution = svd.solve(Matrix.columnVector(points.map((p) => p.value))).to1DArray()
  const coefficients = unscaled(solution, S, D)

  const fitted = design.mmul(Matrix.columnVector(solution)).to1DArray()
  const residuals = points.map((p, i) => p.value - fitted[i]!)
  const spare = points.length - TERMS.length
  const polynomial = { what, unit, dewUnit, coefficients, region: region.value }
  if (spare === 0) return ok({ polynomial })
  const scatter = Math.sqrt(residuals.reduce((sum, r) => sum + r * r, 0) / spare)
  return ok({ polynomial: { ...polynomial, residual: scatter * perUnit }, worst: worstPoint(residuals, svd) })
}

/** A point that the others say nothing about has no deviation from them. */
const ALONE = 1e-9
const MOST_POINTS = 2000
/** Least ratio of the singular values: four by four points in equal steps have 0.11, ten in a triangle 0.013. */
const RANK = 1e-4

function problemWith(points: readonly RatingPoint[]): Problem | undefined {
  if (points.length < TERMS.length) return undetermined(points.length)
  const many = outOfRange('rating points', points.length, TERMS.length, MOST_POINTS, 'points')
  if (many) return many
  return points
    .flatMap(({ suctionDew_K, dischargeDew_K, value }, i) => [
      outOfRange(`point ${i + 1}, suction dew temperature`, suctionDew_K, 193.15, 373.15, 'K'),
      outOfRange(`point ${i + 1}, discharge dew temperature`, dischargeDew_K, suctionDew_K, 373.15, 'K'),
      outOfRange(`point ${i + 1}, value`, value, Number.MIN_VALUE, 1e9, 'in its unit'),
    ])
    .find((problem) => problem !== undefined)
}

function undetermined(count: number): Problem {
  const accepted = `${TERMS.length} points or more, at four or more suction and four or more discharge temperatures`
  return { kind: 'missing', field: 'rating points', value: `${count} points`, accepted }
}

interface Scaled {
  readonly values: readonly number[]
  readonly middle: number
  readonly half: number
}

function scaled(temperatures: readonly number[]): Scaled {
  const [low, high] = [Math.min(...temperatures), Math.max(...temperatures)]
  const [middle, half] = [(low + high) / 2, (high - low) / 2]
  return { values: temperatures.map((t) => (t - middle) / half), middle, half }
}

/** Coefficients of powers of S and D from those of powers of (S − middle)/half and (D − middle)/half. */
function unscaled(solution: readonly number[], S: Scaled, D: Scaled): readonly number[] {
  return TERMS.map(([i, j]) =>
    TERMS.reduce((sum, [m, n], k) => (m < i || n < j ? sum : sum + solution[k]! * part(m, i, S) * part(n, j, D)), 0),
  )
}

/** Coefficient of t^i in ((t − middle)/half)^m. */
function part(m: number, i: number, { middle, half }: Scaled): number {
  const binomial = [1, m, (m * (m - 1)) / 2, (m * (m - 1) * (m - 2)) / 6][i]!
  return (binomial * (-middle) ** (m - i)) / half ** m
}

function worstPoint(residuals: readonly number[], svd: SingularValueDecomposition) {
  const left = svd.leftSingularVectors
  const off = residuals.map((r, i) => {
    const alone = 1 - left.getRow(i).reduce((sum, u) => sum + u * u, 0)
    return alone > ALONE ? r / alone : 0
  })
  const index = off.reduce((worst, o, i) => (Math.abs(o) > Math.abs(off[worst]!) ? i : worst), 0)
  return { index, off: off[index]! }
}
